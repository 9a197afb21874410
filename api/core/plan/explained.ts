import type { PlanInput } from '../contract.ts';
import type { PlanSpec } from '../wish/plan-spec.ts';
import type { Plan } from './reckon-plan.ts';
import type { PlanFigures } from './write-plan.ts';

/** Everything that a derivation may draw on. */
export interface Explained {
  readonly input: PlanInput;
  readonly spec: PlanSpec;
  readonly plan: Plan;
  readonly figures: PlanFigures;
}
