import { type Mock, vi } from 'vitest';
import type { MakingContext, PlanActions } from '../../client/elements/plan/plan-context.ts';
import { completeDraft, FIRST_OWN, type PlanState } from '../../client/elements/plan/plan-state.ts';
import { faultsSource } from '../../client/text/faults/source.ts';
import { makingText } from '../../client/text/making-text.ts';
import { planText } from '../../client/text/text.ts';
import { planThrow } from './plan-throw.ts';

/** What a view is given, with actions that only remember. */
export interface WatchedContext extends MakingContext {
  readonly act: { readonly [Name in keyof PlanActions]: Mock<PlanActions[Name]> };
}

/** A context with the plan of a throw on the table, changed where the test says. */
export function watchContext(change: Partial<PlanState> = {}): WatchedContext {
  const draft = completeDraft({});
  const state: PlanState = {
    ...FIRST_OWN,
    draft,
    answer: planThrow(),
    faults: [],
    hostFaults: [],
    from: 'service',
    isBusy: false,
    ...change,
  };
  const act = {
    edit: vi.fn(),
    set: vi.fn(),
    replace: vi.fn(),
    say: vi.fn(),
    understand: vi.fn(),
    measureIn: vi.fn(),
    show: vi.fn(),
    choose: vi.fn(),
    tick: vi.fn(),
    lay: vi.fn(),
    load: vi.fn(),
    retry: vi.fn(),
    print: vi.fn(),
  };
  const unit = state.draft.unit === 'cm' ? 'cm' : 'in';
  const text = { ...planText.en, ...makingText.en };
  const said = state.answer?.input.unit ?? unit;
  return { state, text, unit, said, isLocked: () => false, act, sentences: faultsSource.en };
}
