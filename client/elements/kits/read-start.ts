import type { Fault } from '#core/outcome.ts';
import { KITS_KEYS } from '../../data/names.ts';
import { readHostInput } from '../../data/read-host-input.ts';
import { writeAmounts } from './kit-money.ts';
import {
  currencyOf,
  FIRST_DRAFT,
  type KitsDraft,
  type KitsState,
  namesPrints,
} from './kits-state.ts';

/** Where something to begin with may stand. */
export interface Start {
  readonly address: string;
  /** What was kept on the device: the address that it stood beside, `#`, and a flat query. */
  readonly kept: string;
  /** What the host gives: a flat query. */
  readonly kits: string;
}

/**
 * What the address asks for, else what was kept, else what the host gives; with none of them, the invented shop's
 * bolts. What was kept beside this very address is the same with what was typed since. An address has money in minor
 * units, and people do not.
 */
export function readStart(start: Start): Pick<KitsState, 'draft' | 'hostFaults' | 'hasPrints'> {
  const line = start.kept.indexOf('#');
  const [beside, typed] = [start.kept.slice(0, line), start.kept.slice(line + 1)];
  const address = read(start.address);
  const kept = read(typed);
  if (isThere(address) && beside !== start.address) return begin(sayAmounts(address.draft), []);
  if (line >= 0 && (isThere(kept) || typed === '')) return begin(kept.draft, []);
  if (isThere(address)) return begin(sayAmounts(address.draft), []);
  const host = read(start.kits);
  return begin(isThere(host) ? sayAmounts(host.draft) : FIRST_DRAFT, host.faults);
}

const read = (query: string) => readHostInput<KitsDraft>(query, KITS_KEYS);
const isThere = ({ draft }: { readonly draft: KitsDraft }) => Object.keys(draft).length > 0;

const sayAmounts = (draft: KitsDraft) => writeAmounts(draft, currencyOf(draft));

function begin(draft: KitsDraft, hostFaults: readonly Fault[]) {
  return { draft, hostFaults, hasPrints: namesPrints(draft) };
}
