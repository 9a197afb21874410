import { chooseSplit, type Membership, type Split } from './choose-split.ts';
import { type Dictionary, settleDictionary } from './dictionary.ts';
import { splitDictionary } from './split-dictionary.ts';
import type { Budget } from './strip-plan.ts';

/** What is looked for: whole numbers for some variables, at little cost. */
export interface WholeSearch {
  /** Variables 0 to `names` − 1 must be whole; others are whole where those are. */
  readonly names: number;
  /** Sums to ask whole numbers of before single variables: the weightier sets first. */
  readonly sets: readonly (readonly Membership[])[];
  /** Greatest cost that is of use. */
  readonly target: number;
  /** By how much another solution must be cheaper to be of use. */
  readonly step: number;
  /** No solution costs less. */
  readonly bound: number;
  readonly budget: Budget;
  /** The exact cost of a solution; nothing where it does not hold. */
  readonly measure: (times: Float64Array) => number | undefined;
}

/** The cheapest solution found, and whether every possibility was tried. */
export interface WholeResult {
  readonly times?: Float64Array;
  /** With no solution: there is none within the target. With one: none is cheaper by a step. */
  readonly isComplete: boolean;
}

/**
 * The cheapest whole solution of a linear programme: branch and bound (Land and Doig, 1960). A sum
 * that must be whole and is not is asked to be at most the whole number below or at least the one
 * above; each only adds to the cost, and what costs more than is of use is dropped.
 *
 * @param dictionary with no cost below 0
 */
export function searchWhole(dictionary: Dictionary, search: WholeSearch): WholeResult {
  const state: SearchState = { search, target: search.target, times: undefined, isSound: true };
  const { budget } = search;
  if (settleDictionary(dictionary, state.target + SLACK, budget)) explore(state, dictionary);
  return {
    ...(state.times && { times: state.times }),
    isComplete: (state.isSound && budget.steps > 0) || state.target < search.bound - SLACK,
  };
}

interface SearchState {
  readonly search: WholeSearch;
  target: number;
  times: Float64Array | undefined;
  /** False where the arithmetic was once too coarse to tell. */
  isSound: boolean;
}

const SLACK = 1e-6;

function explore(state: SearchState, dictionary: Dictionary): void {
  const { search } = state;
  if (search.budget.steps <= 0) return;
  const split = findSplit(search, dictionary);
  if (split === undefined) {
    keepSolution(state, dictionary);
    return;
  }
  for (const child of childrenOf(state, dictionary, split)) {
    if (state.target < search.bound - SLACK) return;
    if (child.cost <= state.target + SLACK) explore(state, child);
  }
}

function findSplit({ sets, names }: WholeSearch, dictionary: Dictionary): Split | undefined {
  for (const members of sets) {
    const split = chooseSplit(dictionary, members);
    if (split !== undefined) return split;
  }
  return splitSingle(names, dictionary);
}

/** The variable farthest from any whole number, as a sum of its own. */
function splitSingle(names: number, { basic, amounts }: Dictionary): Split | undefined {
  let farthest = 1e-6;
  let found: { readonly name: number; readonly value: number; readonly sum: number } | undefined;
  for (let row = 0; row < basic.length; row += 1) {
    const name = basic[row] ?? -1;
    if (name < 0 || name >= names) continue;
    const sum = amounts[row] ?? 0;
    const value = Math.floor(sum + 1e-6);
    const distance = Math.min(sum - value, value + 1 - sum);
    if (distance <= farthest) continue;
    farthest = distance;
    found = { name, value, sum };
  }
  if (found === undefined) return undefined;
  const members = new Uint8Array(names);
  members[found.name] = 1;
  return { members, value: found.value, sum: found.sum };
}

/** Both sides of a split that may still hold a solution of use, the cheaper first. */
function childrenOf(
  { search, target }: SearchState,
  dictionary: Dictionary,
  split: Split,
): readonly Dictionary[] {
  const most = target + SLACK;
  search.budget.steps -= dictionary.table.length / 32;
  return splitDictionary(dictionary, split, most - dictionary.cost)
    .filter((child) => settleDictionary(child, most, search.budget))
    .sort((one, other) => one.cost - other.cost);
}

function keepSolution(state: SearchState, { basic, amounts }: Dictionary): void {
  const { names, measure, step } = state.search;
  const times = new Float64Array(names);
  for (const [row, name] of basic.entries()) {
    if (name >= 0 && name < names) times[name] = Math.round(amounts[row] ?? 0);
  }
  const cost = measure(times);
  if (cost === undefined || cost > state.target + SLACK) {
    state.isSound = false;
    return;
  }
  state.times = times;
  state.target = cost - step;
}
