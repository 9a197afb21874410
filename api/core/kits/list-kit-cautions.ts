import { listCautions } from '../cautions.ts';
import type { Caution, CautionCode, PlanInput } from '../contract.ts';
import { gatherCautions } from '../plan/gather-cautions.ts';
import type { Plan } from '../plan/reckon-plan.ts';
import { SOURCES } from '../sources.ts';
import type { PlanSpec } from '../wish/plan-spec.ts';

/** Of the cautions of a plan those that matter to whoever cuts kits and sells them. */
const OF_KITS: ReadonlySet<CautionCode> = new Set([
  'infant-sleep',
  'rotary-cutter',
  'dye-bleed',
  'flammability',
  'selling-children',
]);

/**
 * The cautions of kits, the gravest first, with what the rules on labels do and do not ask.
 */
export function listKitCautions(input: PlanInput, plan: Plan, spec: PlanSpec): readonly Caution[] {
  const cautions = listCautions(gatherCautions(input, plan, spec));
  return [
    ...cautions.filter(({ code }) => OF_KITS.has(code)),
    {
      code: 'label-rules',
      severity: 'note',
      text: 'This label is a draft. Rules on fibre content differ from country to country, and the fibres here are what such cloth usually is: go by the bolt, and ask the authority where you sell. In the US the rule on care labels (16 CFR 423) covers clothing, not quilts, so the care line is yours to give.',
      source: SOURCES.labels,
    },
  ];
}
