import type { PlanRequest } from '#core/contract.ts';
import type { HandOut } from '../../client/elements/plan/hand-out-sheet.ts';
import { workSource } from '../../client/text/work/source.ts';
import { planThrow } from './plan-throw.ts';

/** What is printed for a class of twelve. */
export function makeHandOut(
  request: Partial<PlanRequest> = {},
  onDone: () => void = () => {},
): HandOut {
  const plan = planThrow({ pupils: 12, ...request });
  if (plan.class === undefined) throw new Error('no class');
  const wish = { heading: 'Tuesday at six', pupils: '12', note: 'Bring tea.' };
  return { words: workSource.en, wish, plan, all: plan.class, onDone };
}
