import { askBolt, type BoltAsk } from '#core/counter/ask-bolt.ts';
import { countSquaresLeft } from '#core/counter/count-squares-left.ts';
import type { CounterNeed } from '#core/counter/counter-need.ts';
import { priceLength } from '#core/counter/price-length.ts';
import type { Bolt } from '#core/counter/sum-bolts.ts';
import { toMillimetres } from '#core/length.ts';
import type { LengthLimit } from '#core/limits.ts';
import type { Fault } from '#core/outcome.ts';
import { readLengthField, startReading } from '#core/wish/reading.ts';
import type { AnyDraft } from './draft.ts';
import { readMoney } from './money.ts';

/** A place to type into, of one cloth. */
export type ShopPlace = 'width' | 'price' | 'left' | 'otherWidth' | 'otherPrice';

/** What is wrong at a place; `price` where money cannot be read. */
export interface ShopFault {
  readonly place: ShopPlace;
  readonly fault: Fault | 'price';
}

/** One cloth at the counter, with what was typed of its bolt. */
export interface CounterRow {
  readonly need: CounterNeed;
  readonly bolt: Bolt;
  readonly ask: BoltAsk;
  /** Minor units for what is asked for; absent where no price is known. */
  readonly cost?: number | undefined;
  /** Another bolt to compare with. */
  readonly other?: Bolt | undefined;
  /** What is left on the bolt, in mm, and the squares that it gives. */
  readonly left?: { readonly length: number; readonly squares: number } | undefined;
  readonly isGot: boolean;
  readonly faults: readonly ShopFault[];
}

/**
 * Reads what was typed and ticked for every cloth. What cannot be read is told, and the bolt of the plan holds.
 *
 * @param currency three letters; hundredths where it is unknown.
 */
export function readRows(
  needs: readonly CounterNeed[],
  shop: AnyDraft,
  currency: string,
): readonly CounterRow[] {
  return needs.map((need, at) => readRow(need, (place) => shop[`${at}.${place}`] ?? '', currency));
}

function readRow(
  need: CounterNeed,
  typed: (place: ShopPlace | 'got') => string,
  currency: string,
): CounterRow {
  const faults: ShopFault[] = [];
  const length = (place: ShopPlace, limit: LengthLimit) => {
    const said = typed(place).trim();
    if (said === '') return undefined;
    const given = place === 'left' ? asSold(said, need) : said;
    const reading = startReading(need.unit);
    const value = readLengthField(reading, { path: [place], given, limit });
    for (const fault of reading.faults) faults.push({ place, fault: { ...fault, received: said } });
    return reading.faults.length > 0 ? undefined : toMillimetres(value, need.unit);
  };
  const price = (place: ShopPlace) => {
    const said = typed(place).trim();
    const read = said === '' ? undefined : readMoney(said, currency);
    if (said !== '' && read === undefined) faults.push({ place, fault: 'price' });
    return read;
  };
  const bolt = { width: length('width', 'rollWidth') ?? need.roll.width, price: price('price') };
  const otherWidth = length('otherWidth', 'rollWidth');
  const otherPrice = price('otherPrice');
  const hasOther = otherWidth !== undefined || otherPrice !== undefined;
  const left = length('left', 'lengthLeft');
  const ask = askBolt(need, bolt.width);
  return {
    need,
    bolt,
    ask,
    cost: ask.buy && bolt.price !== undefined ? priceLength(bolt.price, ask.buy.amount) : undefined,
    other: hasOther ? { width: otherWidth ?? bolt.width, price: otherPrice } : undefined,
    left:
      left === undefined
        ? undefined
        : { length: left, squares: countSquaresLeft(need, { width: bolt.width, length: left }) },
    isGot: typed('got') !== '',
    faults,
  };
}

/** A length without a unit of its own is told in what cloth is sold by: yards or metres. */
function asSold(said: string, { unit }: Pick<CounterNeed, 'unit'>): string {
  return /[a-z"'″′”’]/i.test(said) ? said : `${said} ${unit === 'in' ? 'yd' : 'm'}`;
}
