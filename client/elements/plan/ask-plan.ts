import type { Fault } from '#core/outcome.ts';
import { type Draft, dropFaulty, writeQuery } from '../../data/draft.ts';
import { type LoadedPlan, loadPlan, type PlanSource } from '../../data/load-plan.ts';
import type { ShownOption } from '../../data/plan-answer-schema.ts';
import { chooseGrid, completeDraft, isSameGrid } from './plan-state.ts';

/** What is asked for. */
export interface Asked {
  readonly draft: Draft;
  /** Another plan that was chosen. Its cut alone keeps the wish; where that leads elsewhere, its grid is needed too. */
  readonly wanted?: ShownOption | undefined;
  /** How often what cannot be had may be left out, so that a plan can be made of the rest; at last all of it is. */
  readonly tries?: number;
}

/** What came of it, and the draft that it came of. */
export interface Answered {
  readonly draft: Draft;
  readonly loaded: LoadedPlan;
  /** What was left out so that a plan could be made. */
  readonly leftOut: readonly Fault[];
}

/** Asks for the plan of a draft, and again where the first answer is not what was wanted. */
export async function askPlan(
  { draft, wanted, tries = 0 }: Asked,
  source: PlanSource,
  signal: AbortSignal,
): Promise<Answered> {
  const loaded = await loadPlan(writeQuery(draft), source, signal);
  if (wanted !== undefined && loaded.kind === 'answer' && !isSameGrid(wanted, loaded.answer)) {
    return askPlan({ draft: chooseGrid(draft, wanted) }, source, signal);
  }
  if (loaded.kind !== 'faults' || tries === 0) return { draft, loaded, leftOut: [] };
  const rest = tries === 1 ? {} : dropFaulty(draft, loaded.faults);
  const next = { draft: completeDraft(rest), tries: tries - 1 };
  const again = await askPlan(next, source, signal);
  return { ...again, leftOut: [...loaded.faults, ...again.leftOut] };
}
