import type { CautionFacts } from '../cautions.ts';
import type { PlanInput } from '../contract.ts';
import { toMillimetres } from '../length.ts';
import { blocksToHalve } from '../wash/shrink-plan.ts';
import type { PlanSpec } from '../wish/plan-spec.ts';
import type { Plan } from './reckon-plan.ts';

/** How far least and most of the washed size lie apart, mm. */
export function doubtOf(plan: Pick<Plan, 'low' | 'high'>): {
  readonly width: number;
  readonly height: number;
} {
  return {
    width: plan.high.width - plan.low.width,
    height: plan.high.height - plan.low.height,
  };
}

/**
 * What of a plan decides its cautions; lengths in millimetres.
 */
export function gatherCautions(input: PlanInput, plan: Plan, spec: PlanSpec): CautionFacts {
  const mm = (value: number) => toMillimetres(value, input.unit);
  const { target } = input;
  const { columns, rows } = plan.grid;
  const blocks = blocksToHalve(input, spec.shrink);
  const doubt = { ...doubtOf(plan), ...(blocks !== undefined && { blocks }) };
  return {
    unit: spec.unit,
    size: plan.washed,
    wish: plan.wish,
    ...('bed' in target && {
      mattress: { width: mm(target.bed.width), height: mm(target.bed.length) },
    }),
    infant: input.infant,
    clearance: plan.clearance,
    ...(columns > 1 && rows > 1 && { crossingThickness: 4 * plan.thickness }),
    snips: plan.snips.beforeJoining,
    needle: plan.needle,
    machine: plan.weight.machine,
    layers: spec.layers,
    ...(!spec.shrink.isMeasured && { doubt }),
  };
}
