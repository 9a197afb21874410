import type { Fault } from '#core/outcome.ts';
import type { NearestQuilt } from '../../data/counter-nearest.ts';
import { type CounterPlace, SQUARE_KEYS } from '../../data/counter-place.ts';
import { type Counter, readCounter } from '../../data/counter-question.ts';
import { type CounterRow, readRows } from '../../data/counter-rows.ts';
import type { Sentences } from '../../fields/say-fault.ts';

/** What the lower half is used for. */
export type Mode = 'bolt' | 'left' | 'other' | 'list';

/** All that the counter knows; views only read it. */
export interface CounterState {
  readonly place: CounterPlace;
  /** What is to be bought; absent while nothing was asked for that can be read. */
  readonly counter?: Counter | undefined;
  /** What is wrong with what was asked for. */
  readonly faults: readonly Fault[];
  readonly mode: Mode;
  /** The query of the plan that was last looked at on this device. */
  readonly lastPlan: string;
  /** What what is left makes; nothing while that is not known, `unfetched` where the search could not be fetched. */
  readonly nearest?: NearestQuilt | 'none' | 'unfetched' | undefined;
  /**
   * The address as a code for the camera of another phone: an outline of squares, too long for one, or what draws it
   * could not be fetched.
   */
  readonly code?:
    | { readonly path: string; readonly side: number }
    | 'long'
    | 'unfetched'
    | undefined;
  /** What exactly is wrong, once it was fetched. */
  readonly sentences?: Sentences | undefined;
  /** One sentence for those who hear the page. */
  readonly said: string;
}

export const FIRST_STATE: CounterState = {
  place: { question: '', shop: {} },
  faults: [],
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
  const at = /^\d{1,2}$/.test(shop['at'] ?? '') ? Number(shop['at']) : 0;
  return Math.min(at, Math.max(0, cloths - 1));
}

/** Every cloth with what was typed of its bolt; none while nothing is asked for. */
export function rowsOf(
  { counter, place }: Pick<CounterState, 'counter' | 'place'>,
  currency: string,
): readonly CounterRow[] {
  return counter === undefined ? [] : readRows(counter.needs, place.shop, currency);
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

/**
 * Another question with all that was typed and ticked, but for what is left: that was measured for the one before.
 *
 * @example
 * askInstead({ question: 'a=1', shop: { '0.width': '44', '0.left': '2' } }, 'a=2')
 * // => { question: 'a=2', shop: { '0.width': '44' } }
 */
export function askInstead({ shop }: CounterPlace, question: string): CounterPlace {
  const kept = Object.entries(shop).filter(([path]) => !path.endsWith('.left'));
  return { question, shop: Object.fromEntries(kept) };
}

/**
 * What a place asks for, as understood. What cannot be stays where it was typed, so that it can be mended there.
 *
 * @example
 * readAsked({ question: 'cut=wide&count=40', shop: {} }).place // => { question: '', shop: { cut: 'wide', count: '40' } }
 */
export function readAsked(place: CounterPlace): Pick<CounterState, 'place' | 'counter' | 'faults'> {
  const { question, shop } = place;
  if (question === '') return { place, counter: undefined, faults: [] };
  const read = readCounter(question);
  if (read.ok) {
    const { question: canonical } = read.value;
    return { place: { question: canonical, shop }, counter: read.value, faults: [] };
  }
  const typed = readSquares(question) ?? { address: question };
  return { place: { question: '', shop: typed }, counter: undefined, faults: read.faults };
}

function readSquares(question: string): CounterPlace['shop'] | undefined {
  const asked = [...new URLSearchParams(question)].map(([key, value]) => [key, value.trim()]);
  const typed = Object.fromEntries(asked.filter(([, value]) => value !== ''));
  return SQUARE_KEYS.some((key) => Object.hasOwn(typed, key)) ? typed : undefined;
}
