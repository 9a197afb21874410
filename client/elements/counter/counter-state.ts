import type { Unit } from '#core/contract.ts';
import type { Fault } from '#core/outcome.ts';
import type { NearestQuilt } from '../../data/counter-nearest.ts';
import type { CounterPlace } from '../../data/counter-place.ts';
import type { Counter } from '../../data/counter-question.ts';

/** What the lower half is used for. */
export type Mode = 'bolt' | 'left' | 'other' | 'list';

/** What is typed before anything is on the counter. */
export interface Entry {
  readonly address: string;
  readonly cut: string;
  readonly count: string;
  readonly unit: Unit;
}

/** All that the counter knows; views only read it. */
export interface CounterState {
  readonly place: CounterPlace;
  /** What is to be bought; absent while nothing was asked for that can be read. */
  readonly counter?: Counter | undefined;
  /** What is wrong with what was asked for. */
  readonly faults: readonly Fault[];
  readonly entry: Entry;
  readonly mode: Mode;
  /** The query of the plan that was last looked at on this device. */
  readonly lastPlan: string;
  /** What what is left makes; nothing while that is not known. */
  readonly nearest?: NearestQuilt | 'none' | undefined;
  /** The address as a code for the camera of another phone: an outline of squares, or too long for one. */
  readonly code?: { readonly path: string; readonly side: number } | 'long' | undefined;
  /** One sentence for those who hear the page. */
  readonly said: string;
}

export const FIRST_STATE: CounterState = {
  place: { question: '', shop: {} },
  faults: [],
  entry: { address: '', cut: '', count: '', unit: 'in' },
  mode: 'bolt',
  lastPlan: '',
  said: '',
};

/**
 * Which cloth is in hand, of so many.
 *
 * @example
 * inHand({ question: '', shop: { at: '1' } }, 5) // => 1
 * inHand({ question: '', shop: { at: '9' } }, 5) // => 4
 */
export function inHand({ shop }: CounterPlace, cloths: number): number {
  return Math.min(Number(shop['at'] ?? 0), Math.max(0, cloths - 1));
}

/**
 * Types or ticks something; an empty text takes it out.
 *
 * @example
 * putInShop({ question: 'a=1', shop: { at: '1' } }, '0.width', '44').shop // => { at: '1', '0.width': '44' }
 * putInShop({ question: 'a=1', shop: { at: '1' } }, 'at', '').shop // => {}
 */
export function putInShop(place: CounterPlace, path: string, value: string): CounterPlace {
  const { [path]: _old, ...others } = place.shop;
  return { ...place, shop: value === '' ? others : { ...others, [path]: value } };
}
