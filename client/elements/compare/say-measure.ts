import type { Unit } from '#core/contract.ts';
import { MILLIMETRES } from '#core/length.ts';
import { GRAMS, massUnit } from '#core/mass.ts';
import { writeMoney } from '../../data/money.ts';
import { readCurrency } from '../../data/read-currency.ts';
import { writeMeasure } from '../../fields/write-figures.ts';
import { writeTime } from '../../fields/write-time.ts';
import type { Measure } from './list-figures.ts';

/** How figures are told. */
export interface Telling {
  readonly language: string;
  /** Cloth and thread are told in yards beside inches and in metres beside centimetres, mass in pounds and kilograms. */
  readonly unit: Unit;
  /** Whole minor units as money, where the page names a currency. */
  readonly sayMoney?: ((minor: number) => string) | undefined;
}

/**
 * A figure of a plan with its unit; 0 or more.
 *
 * @example
 * sayMeasure('cloth', 914.4, { language: 'en', unit: 'in', sayMoney: String }) // => '1\u00a0yd'
 * sayMeasure('count', 3200, { language: 'en', unit: 'in', sayMoney: String }) // => '3,200'
 */
export function sayMeasure(measure: Measure, value: number, telling: Telling): string {
  const { language, unit, sayMoney } = telling;
  if (measure === 'count') return new Intl.NumberFormat(language).format(value);
  if (measure === 'money') return sayMoney?.(value) ?? '';
  if (measure === 'time') return writeTime(language, value);
  if (measure === 'mass') {
    const mass = massUnit(unit);
    return writeMeasure(language, mass, value / GRAMS[mass]);
  }
  const cloth = unit === 'in' ? 'yd' : 'm';
  const shown = measure === 'cloth' ? cloth : unit;
  return writeMeasure(language, shown, value / MILLIMETRES[shown]);
}

/**
 * A figure as it is said, rounded: differences are told of these, so that they agree with what stands beside them.
 *
 * @example
 * roundAsSaid('mass', 600, 'cm') // => 600
 * roundAsSaid('time', 276, 'in') // => 270
 */
export function roundAsSaid(measure: Measure, value: number, unit: Unit): number {
  const step = stepOf(measure, value, unit);
  return Math.round(value / step) * step;
}

/** Eighths of an inch and of a yard, tenths of all else; minutes by five or, of much work, by thirty. */
function stepOf(measure: Measure, value: number, unit: Unit): number {
  if (measure === 'count' || measure === 'money') return 1;
  if (measure === 'time') return value < 90 ? 5 : 30;
  if (measure === 'mass') return GRAMS[massUnit(unit)] / 10;
  if (unit === 'in') return MILLIMETRES[measure === 'cloth' ? 'yd' : 'in'] / 8;
  return MILLIMETRES[measure === 'cloth' ? 'm' : 'cm'] / 10;
}

/** How figures are told on a page: money only where its currency is known, as three letters of ISO 4217. */
export function tellIn(language: string, unit: Unit, currency: string | null | undefined): Telling {
  const code = readCurrency(currency);
  return {
    language,
    unit,
    sayMoney: code === '' ? undefined : (minor) => writeMoney(language, code, minor),
  };
}
