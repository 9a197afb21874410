import type { ShownPlan } from '../../client/data/is-plan-answer.ts';
import type {
  CompareActions,
  CompareContext,
} from '../../client/elements/compare/compare-context.ts';
import {
  BLANK,
  type CompareState,
  type Side,
} from '../../client/elements/compare/compare-state.ts';
import { compareSource } from '../../client/text/compare/source.ts';
import { faultsSource } from '../../client/text/faults/source.ts';
import { lightSource } from '../../client/text/light/source.ts';

/** A side with a plan on it. */
export function sideOf(answer: ShownPlan, change: Partial<Side> = {}): Side {
  return { ...BLANK, typed: answer.links.page, query: 'target.size=lap', answer, ...change };
}

/** What the views of a comparison are given, and what was done in them. */
export function compareContext(
  state: CompareState,
  change: Partial<CompareContext> = {},
): { readonly context: CompareContext; readonly done: readonly unknown[] } {
  const done: unknown[] = [];
  const note =
    (name: string) =>
    (...given: readonly unknown[]) =>
      void done.push([name, ...given.filter((one) => !(one instanceof Event))]);
  const act: CompareActions = {
    type: note('type'),
    double: note('double'),
    swap: note('swap'),
    measureIn: note('measureIn'),
    retry: note('retry'),
  };
  const context: CompareContext = {
    state,
    words: { light: lightSource.en, faults: faultsSource.en, compare: compareSource.en },
    telling: { language: 'en', unit: 'in', sayMoney: String },
    api: 'https://quilts.example',
    tell: ({ code }) => code,
    isLocked: () => false,
    canDouble: () => true,
    act,
    ...change,
  };
  return { context, done };
}
