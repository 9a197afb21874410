import { vi } from 'vitest';
import type { ShownWash } from '../../client/data/wash-answer-schema.ts';
import { computeWash } from '../../client/data/wash-on-device.ts';
import type { WashActions, WashContext } from '../../client/elements/wash/wash-context.ts';
import { washErrand } from '../../client/elements/wash/wash-errand.ts';
import {
  FIRST_OWN,
  splitDraft,
  unitOf,
  type WashState,
  writeAsked,
} from '../../client/elements/wash/wash-state.ts';
import { washText } from '../../client/text/wash-text.ts';

/** The answer of the core to a flat query. */
export function answerWash(query: string): ShownWash {
  const outcome = computeWash(query);
  if (!outcome.ok) throw new Error(`No wash: ${JSON.stringify(outcome.faults)}`);
  return outcome.value;
}

/** What a section of the view is given for a flat query; for an empty one, the invented shop's swatches. */
export function showWash(query = '', change: Partial<WashState> = {}): WashContext {
  const start = splitDraft(washErrand.complete(Object.fromEntries(new URLSearchParams(query))));
  const asked = writeAsked(start);
  const answer = answerWash(asked.query);
  const state: WashState = {
    ...FIRST_OWN,
    ...start,
    places: asked.places,
    answer,
    faults: [],
    hostFaults: [],
    from: 'service',
    isBusy: false,
    ...change,
  };
  const unit = unitOf(state.draft);
  return { ...washText.en, state, unit, isLocked: () => false, act: listenTo() };
}

/** Actions that do nothing but remember that they were asked for. */
function listenTo(): WashActions {
  return {
    edit: vi.fn(),
    replace: vi.fn(),
    typeCell: vi.fn(),
    name: vi.fn(),
    addCloth: vi.fn(),
    removeCloth: vi.fn(),
    clear: vi.fn(),
    measureIn: vi.fn(),
    give: vi.fn(),
    show: vi.fn(),
    retry: vi.fn(),
    print: vi.fn(),
    printSheet: vi.fn(),
  };
}
