import { vi } from 'vitest';
import type { ShownWash } from '../../client/data/wash-answer-schema.ts';
import { computeWash } from '../../client/data/wash-on-device.ts';
import { readStart } from '../../client/elements/wash/read-start.ts';
import type { WashActions, WashContext } from '../../client/elements/wash/wash-context.ts';
import {
  FIRST_STATE,
  unitOf,
  type WashState,
  writeAsked,
} from '../../client/elements/wash/wash-state.ts';
import { chooseWashText } from '../../client/text/wash-text.ts';

/** The answer of the core to a flat query. */
export function answerWash(query: string): ShownWash {
  const outcome = computeWash(query);
  if (!outcome.ok) throw new Error(`No wash: ${JSON.stringify(outcome.faults)}`);
  return outcome.value;
}

/** What a section of the view is given for a flat query; for an empty one, the invented shop's swatches. */
export function showWash(query = '', change: Partial<WashState> = {}): WashContext {
  const start = readStart({ address: query, kept: '', wash: '' });
  const asked = writeAsked(start);
  const answer = answerWash(asked.query);
  const state = {
    ...FIRST_STATE,
    ...start,
    places: asked.places,
    answer,
    isBusy: false,
    ...change,
  };
  return { ...chooseWashText(['en']), state, unit: unitOf(state.draft), act: listenTo() };
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
