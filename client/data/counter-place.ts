import type { AnyDraft } from './draft.ts';
import { writeQuery } from './draft.ts';
import { REQUEST_KEYS } from './names.ts';

/** What the counter is about, and what was done there: all of it stands in one address. */
export interface CounterPlace {
  /** What is to be bought: the query of a plan as `/v1/plan` takes it, or squares of one size. */
  readonly question: string;
  /** What was typed and ticked: behind the `#` of the address, so that no server is told. */
  readonly shop: AnyDraft;
}

/** What squares of one size are asked for by, where no plan is. */
export const SQUARE_KEYS = ['cut', 'count'] as const;

const KEYS: ReadonlySet<string> = new Set([...REQUEST_KEYS, ...SQUARE_KEYS]);
/** A place in the shop: which cloth is in hand, what was typed for one, or what is typed before anything is asked. */
const SHOP = /^(at|unit|cut|count|address|\d{1,2}\.(width|price|left|got|otherWidth|otherPrice))$/;
/** Longer than anything typed here, but for an address. */
const LONGEST = 32;
const LONGEST_ADDRESS = 8192;

/**
 * Reads an address, or its query alone. What other sites append to an address is passed over.
 *
 * @example
 * readPlace('https://quilts.example/?target.size=lap&utm_source=a#0.width=44').question // => 'target.size=lap'
 * readPlace('?target.size=lap#0.width=44&at=1').shop // => { '0.width': '44', at: '1' }
 * readPlace('target.size=lap').question // => 'target.size=lap'
 */
export function readPlace(address: string): CounterPlace {
  const [before = '', hash = ''] = address.trim().split('#');
  const query = before.slice(before.indexOf('?') + 1);
  const asked = [...new URLSearchParams(query)].filter(([path, value]) => {
    return value !== '' && KEYS.has(path.split('.')[0] ?? '');
  });
  const shop = [...new URLSearchParams(hash)].filter(
    ([path, value]) =>
      SHOP.test(path) && value.length <= (path === 'address' ? LONGEST_ADDRESS : LONGEST),
  );
  return { question: writeQuery(Object.fromEntries(asked)), shop: Object.fromEntries(shop) };
}

/**
 * The address of a place, without origin and path.
 *
 * @example
 * writePlace({ question: 'target.size=lap', shop: { '0.left': '1 1/2' } }) // => '?target.size=lap#0.left=1%201%2F2'
 */
export function writePlace({ question, shop }: CounterPlace): string {
  const done = writeQuery(shop);
  return `${question && `?${question}`}${done && `#${done}`}`;
}
