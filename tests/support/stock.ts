import { html } from 'lit';
import type { KitsAnswer, StashAnswer } from '#core/contract.ts';
import { computeKits } from '../../client/data/kits-on-device.ts';
import { computeStash } from '../../client/data/stash-on-device.ts';
import type { KitsContext } from '../../client/elements/kits/kits-context.ts';
import {
  FIRST_STATE as FIRST_KITS,
  FIRST_DRAFT as KITS_DRAFT,
  type KitsState,
  writeAsked as writeKits,
} from '../../client/elements/kits/kits-state.ts';
import type { StashContext } from '../../client/elements/stash/stash-context.ts';
import {
  FIRST_STATE as FIRST_STASH,
  FIRST_DRAFT as STASH_DRAFT,
  type StashState,
  writeAsked as writeStash,
} from '../../client/elements/stash/stash-state.ts';
import { chooseKitsText } from '../../client/text/kits-text.ts';
import { chooseStashText } from '../../client/text/stash-text.ts';

/** What the invented shop's remnants give. */
export function answerStash(query = writeStash(STASH_DRAFT).query): StashAnswer {
  const outcome = computeStash(query);
  if (!outcome.ok) throw new Error(JSON.stringify(outcome.faults));
  return outcome.value;
}

/** What the invented shop's bolts give. */
export function answerKits(query = writeKits(KITS_DRAFT).query): KitsAnswer {
  const outcome = computeKits(query);
  if (!outcome.ok) throw new Error(JSON.stringify(outcome.faults));
  return outcome.value;
}

const still = () => {};
const table = { paste: still, open: still, save: still, clear: still };
const actions = {
  ...table,
  ...{ edit: still, replace: still, typeCell: still, dropRow: still, undo: still },
  ...{ showPrints: still, measureIn: still, retry: still, print: still },
};

/** What the views of a stash are given: the invented shop's cloth, answered, unless told otherwise. */
export function stashContext(
  state: Partial<StashState> = {},
  act: Partial<StashContext['act']> = {},
): StashContext {
  const answered = { draft: STASH_DRAFT, answer: answerStash(), isBusy: false };
  return {
    ...chooseStashText(['en']),
    state: { ...FIRST_STASH, ...answered, ...state },
    unit: 'in',
    act: { ...actions, choose: still, ...act },
  };
}

/** The same for kits. */
export function kitsContext(
  state: Partial<KitsState> = {},
  act: Partial<KitsContext['act']> = {},
): KitsContext {
  const answered = { draft: KITS_DRAFT, answer: answerKits(), isBusy: false };
  return {
    ...chooseKitsText(['en']),
    state: { ...FIRST_KITS, ...answered, ...state },
    unit: 'in',
    act: { ...actions, payIn: still, ...act },
  };
}

/** A template of several that may be left out. */
export const together = (...parts: readonly unknown[]) => html`${parts}`;
