import type { AnyDraft } from '../data/draft.ts';
import { type HostInput, readHostInput } from '../data/read-host-input.ts';

/** What the page around an element asks for. */
export interface HostWish {
  /** A flat query, or an object of the API's contract. */
  readonly preset: unknown;
  /** The unit that the host measures in. */
  readonly unit: string | null | undefined;
}

/**
 * What the host asks for, in its unit where it names none there.
 *
 * @param keys the first parts of the paths that have a place.
 *
 * @example
 * readHost({ preset: 'block.cut=20', unit: 'cm' }, ['block']).draft // => { 'block.cut': '20', unit: 'cm' }
 */
export function readHost<Kind extends AnyDraft>(
  { preset, unit }: HostWish,
  keys: readonly string[],
): HostInput<Kind> {
  const { draft, faults } = readHostInput<Kind>(preset ?? '', keys);
  const isUnitSaid = !unit || draft['unit'] !== undefined;
  return { draft: isUnitSaid ? draft : { ...draft, unit }, faults };
}
