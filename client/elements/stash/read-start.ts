import type { Fault } from '#core/outcome.ts';
import { STASH_KEYS } from '../../data/names.ts';
import { readHostInput } from '../../data/read-host-input.ts';
import { FIRST_DRAFT, namesPrints, type StashDraft, type StashState } from './stash-state.ts';

/** Where something to begin with may stand. */
export interface Start {
  readonly address: string;
  /** What was kept on the device: the address that it stood beside, `#`, and a flat query. */
  readonly kept: string;
  /** What the host gives: a flat query. */
  readonly stash: string;
}

/**
 * What the address asks for, else what was kept, else what the host gives; with none of them, the invented shop's
 * cloth. What was kept beside this very address is the same with what was typed since.
 */
export function readStart(start: Start): Pick<StashState, 'draft' | 'hostFaults' | 'hasPrints'> {
  const line = start.kept.indexOf('#');
  const [beside, typed] = [start.kept.slice(0, line), start.kept.slice(line + 1)];
  const address = read(start.address);
  const kept = read(typed);
  if (isThere(address) && beside !== start.address) return begin(address.draft, []);
  if (line >= 0 && (isThere(kept) || typed === '')) return begin(kept.draft, []);
  if (isThere(address)) return begin(address.draft, []);
  const host = read(start.stash);
  return begin(isThere(host) ? host.draft : FIRST_DRAFT, host.faults);
}

const read = (query: string) => readHostInput<StashDraft>(query, STASH_KEYS);
const isThere = ({ draft }: { readonly draft: StashDraft }) => Object.keys(draft).length > 0;

function begin(draft: StashDraft, hostFaults: readonly Fault[]) {
  return { draft, hostFaults, hasPrints: namesPrints(draft) };
}
