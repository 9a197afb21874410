import type { Purchase } from '#core/contract.ts';
import type { CounterNeed } from '#core/counter/counter-need.ts';
import { fromMillimetres } from '#core/length.ts';
import type { Fault } from '#core/outcome.ts';
import type { CounterRow, ShopPlace } from '../../data/counter-rows.ts';
import { writeMoney } from '../../data/money.ts';
import { writeBound, writeMeasure } from '../../fields/write-figures.ts';
import type { CounterWords } from '../../text/counter/source.ts';
import type { SharedWords } from '../../text/shared/source.ts';
import type { CounterState, Mode } from './counter-state.ts';

/** All that the counter says. */
export interface CounterText {
  readonly shared: SharedWords;
  readonly counter: CounterWords;
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
 * What a cloth is called: its print, which may be a letter alone, else its fabric; and what it is for.
 *
 * @param need a cloth, or squares that nobody named.
 */
export function nameCloth(
  { shared, counter }: CounterText,
  { cloth }: Pick<CounterNeed, 'cloth'>,
): { readonly name: string; readonly role: string } {
  if (cloth === undefined) return { name: counter.cloth, role: '' };
  const role = shared.role(cloth.role);
  const { print, fabric } = cloth;
  if (print === undefined) return { name: shared.fabric(fabric), role };
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

/** The sentence for a fault in the reader's language. */
export function sayFault({ shared }: CounterText, fault: Fault): string {
  const round = fault.code === 'too-small' ? Math.ceil : Math.floor;
  const expected = writeBound(`${fault.expected ?? ''}`, round);
  return shared.faults[fault.code]({ ...fault, ...(expected && { expected }) });
}

/** The sentence for what is wrong at a place of the cloth in hand. */
export function sayFaultAt({ rows, at, text }: CounterContext, place: ShopPlace) {
  const found = rows[at]?.faults.find((one) => one.place === place)?.fault;
  if (found === undefined) return undefined;
  return found === 'price' ? text.counter.badPrice : sayFault(text, found);
}
