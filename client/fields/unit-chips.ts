import type { TemplateResult } from 'lit';
import type { Unit } from '#core/contract.ts';
import { choiceChips } from './choice-chips.ts';

/** Inches or centimetres, as two chips. */
export function unitChips(
  legend: string,
  chosen: Unit,
  onChoose: (unit: Unit) => void,
): TemplateResult {
  return choiceChips({
    name: 'unit',
    legend,
    quiet: true,
    choices: [
      ['in', 'in'],
      ['cm', 'cm'],
    ],
    chosen,
    onChoose,
  });
}
