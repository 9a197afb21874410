import type { Purchase } from '#core/contract.ts';
import type { CounterNeed } from '#core/counter/counter-need.ts';
import { fromMillimetres } from '#core/length.ts';
import type { Fault } from '#core/outcome.ts';
import type { CounterRow, ShopPlace } from '../../data/counter-rows.ts';
import { writeMoney } from '../../data/money.ts';
import { readCurrency } from '../../data/read-currency.ts';
import { type Sentences, sayFault } from '../../fields/say-fault.ts';
import { writeMeasure } from '../../fields/write-figures.ts';
import type { CounterWords } from '../../text/counter/source.ts';
import type { LightWords } from '../../text/light/source.ts';
import { type CounterState, inHand, type Mode, rowsOf } from './counter-state.ts';

/** All that the counter says. */
export interface CounterText {
  readonly light: LightWords;
  readonly counter: CounterWords;
  /** What exactly is wrong; fetched once something is. */
  readonly sentences?: Sentences | undefined;
}

/** A place to type into before anything is on the counter. */
type EntryPlace = 'address' | 'cut' | 'count' | 'unit';

/** What a person can do at the counter. */
export interface CounterActions {
  /** Types into a place of the cloth in hand. */
  readonly type: (place: ShopPlace, text: string) => void;
  readonly take: (at: number) => void;
  readonly tick: (at: number, isGot: boolean) => void;
  readonly turnTo: (mode: Mode) => void;
  /** Types into what is asked for before anything is on the counter. */
  readonly enter: (place: EntryPlace, text: string) => void;
  /** Asks for a plan, by its address or query; or for squares, by theirs. */
  readonly open: (address: string) => void;
  readonly leave: () => void;
  readonly share: () => void;
  readonly showCode: () => void;
}

/** What every part of the view is given. */
export interface CounterContext {
  readonly state: CounterState;
  readonly rows: readonly CounterRow[];
  /** The cloth in hand. */
  readonly at: number;
  readonly text: CounterText;
  readonly currency: string;
  /** The browser knows how to share. */
  readonly canShare: boolean;
  readonly act: CounterActions;
}

/**
 * What the views are given, from the state.
 *
 * @param named the currency as the host names it.
 */
export function makeContext(
  given: Pick<CounterContext, 'state' | 'text' | 'canShare' | 'act'>,
  named: string | null | undefined,
): CounterContext {
  const currency = readCurrency(named);
  const rows = rowsOf(given.state, currency);
  return { ...given, currency, rows, at: inHand(given.state.place, rows.length) };
}

/**
 * What a cloth is called: its print, which may be a letter alone, else its fabric; and what it is for.
 *
 * @param need a cloth, or squares that nobody named.
 */
export function nameCloth(
  { light, counter }: CounterText,
  { cloth }: Pick<CounterNeed, 'cloth'>,
): { readonly name: string; readonly role: string } {
  if (cloth === undefined) return { name: counter.cloth, role: '' };
  const role = light.role(cloth.role);
  const { print, fabric } = cloth;
  if (print === undefined) return { name: light.fabric(fabric), role };
  return { name: print.length > 1 ? print : counter.print(print), role };
}

/** What to ask for, in figures with its unit. */
export function sayPurchase({ counter }: CounterText, { amount, unit }: Purchase): string {
  return writeMeasure(counter.language, unit, amount);
}

/** A length in the unit of the plan. */
export function sayLength(
  { counter }: CounterText,
  unit: CounterNeed['unit'],
  ...millimetres: readonly number[]
): string {
  return writeMeasure(
    counter.language,
    unit,
    ...millimetres.map((one) => fromMillimetres(one, unit)),
  );
}

/** Minor units as money; without a sign where the currency is not known. */
export function sayMoney({ text, currency }: CounterContext, minor: number): string {
  if (currency !== '') return writeMoney(text.counter.language, currency, minor);
  const digits = { minimumFractionDigits: 2, maximumFractionDigits: 2 };
  return new Intl.NumberFormat(text.counter.language, digits).format(minor / 100);
}

/** The sentence for a fault in the reader's language; until the sentences have come, one that fits all. */
export function tellFault({ light, sentences = {} }: CounterText, fault: Fault): string {
  return sayFault(sentences, fault, () => light.wrong);
}

/** The sentence for what is wrong at a place of the cloth in hand. */
export function sayFaultAt({ rows, at, text }: CounterContext, place: ShopPlace) {
  const found = rows[at]?.faults.find((one) => one.place === place)?.fault;
  if (found === undefined) return undefined;
  return found === 'price' ? text.counter.badPrice : tellFault(text, found);
}
