import type { Unit } from '#core/contract.ts';
import type { Fault } from '#core/outcome.ts';
import { type ComparedPlans, readPlanAddress } from '../../data/compared-plans.ts';
import type { ShownPlan } from '../../data/is-plan-answer.ts';
import type { Trouble } from '../../data/load-answer.ts';
import type { LoadedPlan } from '../../data/load-plan.ts';

/** Which of the two. */
export type SideName = keyof ComparedPlans;

/** One of the two plans. */
export interface Side {
  /** As it was typed or pasted. */
  readonly typed: string;
  /** The plan in it, as a flat query. */
  readonly query: string;
  readonly isBusy: boolean;
  /** The last plan that was had. */
  readonly answer?: ShownPlan | undefined;
  readonly from: 'service' | 'device';
  readonly faults: readonly Fault[];
  readonly trouble?: Trouble | undefined;
}

/** Both plans. */
export type CompareState = Readonly<Record<SideName, Side>>;

/** Before anything was asked. */
export const BLANK: Side = { typed: '', query: '', isBusy: false, from: 'service', faults: [] };

/** What was asked of no plan, and what a plan is. */
const NO_PLAN: readonly Fault[] = [{ code: 'target-unclear', path: [] }];

/**
 * A side after something was typed into it: it waits for a plan, or says that there is none in what was typed. The plan
 * from before stays until the next one comes.
 *
 * @example
 * typeSide(BLANK, '?target.size=lap').query // => 'target.size=lap'
 * typeSide(BLANK, 'see you').faults // => [{ code: 'target-unclear', path: [] }]
 */
export function typeSide(side: Side, typed: string): Side {
  const query = readPlanAddress(typed);
  if (query === side.query && query !== '') return { ...side, typed };
  const blank = { ...side, typed, query, trouble: undefined };
  if (query !== '') return { ...blank, isBusy: true, faults: [] };
  return { ...blank, isBusy: false, answer: undefined, faults: typed.trim() === '' ? [] : NO_PLAN };
}

/** A side after it was answered. */
export function answerSide(side: Side, loaded: LoadedPlan): Side {
  const { trouble: _old, ...kept } = side;
  const heard = { ...kept, isBusy: false, faults: [] };
  if (loaded.kind === 'answer') return { ...heard, answer: loaded.answer, from: loaded.from };
  return loaded.kind === 'faults'
    ? { ...heard, faults: loaded.faults }
    : { ...heard, trouble: loaded.trouble };
}

/** The place beside this one. */
export function otherThan(side: SideName): SideName {
  return side === 'a' ? 'b' : 'a';
}

/** Whether what stands there is the plan that was asked for. */
export function isSettled({ answer, isBusy, faults, trouble }: Side): boolean {
  return answer !== undefined && !isBusy && faults.length === 0 && trouble === undefined;
}

/**
 * What figures are told in: what is wanted, else the unit of the first plan.
 *
 * @example
 * chooseUnit({ a: BLANK, b: BLANK }, 'cm') // => 'cm'
 * chooseUnit({ a: BLANK, b: BLANK }, undefined) // => 'in'
 */
export function chooseUnit({ a, b }: CompareState, wanted: string | null | undefined): Unit {
  if (wanted === 'cm' || wanted === 'in') return wanted;
  return (a.answer ?? b.answer)?.input.unit ?? 'in';
}
