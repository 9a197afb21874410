import { typesetFractions } from '#core/drawing/typeset-fractions.ts';
import { writeEighths } from '#core/write-length.ts';

/** Units that people count in eighths; the others are counted in tenths. */
type EighthUnit = 'in' | 'yd';
type TenthUnit = 'cm' | 'm' | 'lb' | 'kg' | 'h';

/**
 * A figure as it is set beside its unit: eighths as fraction signs for inches and yards, else one decimal
 * in the manner of the language.
 *
 * @example
 * writeFigure(8.4, 'in', 'en') // => '8⅜'
 * writeFigure(21.34, 'cm', 'en') // => '21.3'
 */
export function writeFigure(value: number, unit: EighthUnit | TenthUnit, language: string): string {
  if (unit === 'in' || unit === 'yd') return typesetFractions(writeEighths(value));
  return new Intl.NumberFormat(language, { maximumFractionDigits: 1 }).format(value);
}

/**
 * Minutes as hours to the nearest half.
 *
 * @example
 * writeHours(276) // => '4½'
 */
export function writeHours(minutes: number): string {
  return typesetFractions(writeEighths(Math.max(1, Math.round(minutes / 30)) / 2));
}

/**
 * A number as it stands in a field: eighths of an inch as fractions, all else as a plain decimal, exact to
 * four places.
 *
 * @example
 * writeEntry(8.5, 'in') // => '8½'
 * writeEntry(8.4646, 'in') // => '8.4646'
 */
export function writeEntry(value: string | number, unit: 'in' | 'cm'): string {
  if (typeof value === 'string') return value;
  const isEighths = unit === 'in' && Number.isInteger(value * 8);
  return isEighths ? typesetFractions(writeEighths(value)) : String(Number(value.toFixed(4)));
}
