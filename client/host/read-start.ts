import type { AnyDraft } from '../data/draft.ts';
import { type HostInput, readHostInput } from '../data/read-host-input.ts';
import { switchUnit } from '../fields/switch-unit.ts';
import { holdLocked } from './hold-locked.ts';
import { isUnder } from './is-under.ts';
import { type HostWish, readHost } from './read-host.ts';

/** Where a question may come from before anybody typed. */
export interface Start extends HostWish {
  /** The query of the page's address, where the element keeps it; else empty. */
  readonly address: string;
  /** What was left on this device, as a flat query. */
  readonly kept: string;
  /** Places that only the host may set. */
  readonly locked: readonly string[];
}

/** What is asked first. */
export interface Started<Kind extends AnyDraft> extends HostInput<Kind> {
  /** What the host alone asks for, in the unit of the draft. */
  readonly host: Kind;
}

/** Reads a question, at once or when what reads it has been fetched. */
export type ReadStart<Kind extends AnyDraft> = (
  start: Start,
  keys: readonly string[],
) => Started<Kind> | Promise<Started<Kind>>;

/**
 * What the address asks for, else what was left on the device, else what the host does. A locked place has what the
 * host gave it, whatever the others say, and as long as it gave it: where the units differ it is said in the other one.
 * What other sites append to an address is none of ours and passed over.
 *
 * @param keys the first parts of the paths that have a place.
 *
 * @example
 * const start = { address: '', kept: 'target.size=lap', preset: 'block.cut=8', unit: 'in', locked: ['block'] };
 * readStart(start, ['target', 'block']).draft // => { 'target.size': 'lap', 'block.cut': '8' }
 * readStart({ ...start, kept: 'unit=cm' }, ['block', 'unit']).draft // => { unit: 'cm', 'block.cut': '20.32' }
 */
export function readStart<Kind extends AnyDraft>(
  { address, kept, locked, ...wish }: Start,
  keys: readonly string[],
): Started<Kind> {
  const { draft: host, faults } = readHost<Kind>(wish, keys);
  const own = [address, kept]
    .map((given) => readHostInput<Kind>(given, keys))
    .find(({ draft }) => Object.keys(draft).length > 0);
  if (own === undefined) return { draft: host, host, faults };
  const spoken = isUnder('unit', locked) ? host['unit'] : own.draft['unit'];
  const say = (draft: Kind) =>
    switchUnit(draft, spoken === 'cm' ? 'cm' : 'in', { called: {}, input: undefined }).draft;
  // A field that was left empty is nothing to tell of.
  const ownFaults = own.faults.filter(({ code }) => code !== 'unknown-key' && code !== 'empty');
  return {
    draft: holdLocked(say(own.draft), say(host), locked),
    host: say(host),
    faults: [...faults, ...ownFaults],
  };
}
