import type { Derivation, Step, TimeAnswer } from '../contract.ts';
import { roundTo } from '../length.ts';
import { SOURCES } from '../sources.ts';
import { derive } from './derive.ts';

/** Which stage of `time` a step is, and how many steps share it. */
const STAGE_OF = {
  cut: ['cut', 1],
  stack: ['stack', 1],
  'quilt-first': ['quilt', 2],
  'quilt-second': ['quilt', 2],
  snip: ['snip', 1],
  layout: ['layout', 1],
  join: ['joins', 1],
  'join-rows': ['rows', 1],
  border: ['border', 1],
  trim: ['trim', 1],
} as const;

/**
 * Derivations of the minutes of each step: the minutes of its stage, shared by the steps of that stage.
 */
export function explainSteps(steps: readonly Step[], time: TimeAnswer): readonly Derivation[] {
  return steps.flatMap(({ id, minutes }, index) => {
    const row = STAGE_OF[id as keyof typeof STAGE_OF];
    if (row === undefined) return [];
    const [stage, sharing] = row;
    const numbers = { stage: roundTo(time[stage], 9), sharing };
    return [
      derive(`steps.${index}.minutes`, SOURCES.practice, ['stage / sharing', numbers, minutes]),
    ];
  });
}
