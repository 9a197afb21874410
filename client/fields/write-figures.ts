/** Behind a whole number, by how many eighths are left. */
const SIGNS = ['', ...'⅛¼⅜½⅝¾⅞'];

/** Units that people count in eighths; the others are counted in tenths. */
type EighthUnit = 'in' | 'yd';
type TenthUnit = 'cm' | 'm' | 'lb' | 'kg' | '%';

/**
 * Figures with their unit, `×` between them, in the manner of the language: eighths as fraction signs for inches
 * and yards, else one decimal. The space before the unit does not break.
 *
 * @example
 * writeMeasure('en', 'in', 8.4) // => '8⅜\u00a0in'
 * writeMeasure('en', 'cm', 21.34, 30) // => '21.3 × 30\u00a0cm'
 */
export function writeMeasure(
  language: string,
  unit: EighthUnit | TenthUnit,
  ...values: readonly number[]
): string {
  const { format } = new Intl.NumberFormat(language, {
    maximumFractionDigits: 1,
    signDisplay: 'negative',
  });
  const write = unit === 'in' || unit === 'yd' ? setEighths : format;
  return `${values.map((value) => write(value)).join(' × ')}\u00a0${unit}`;
}

/** To the nearest eighth: the core writes it as text to be set in signs, which is 150 bytes more of every element. */
function setEighths(value: number): string {
  const eighths = Math.round(Math.abs(value) * 8);
  const sign = SIGNS[eighths % 8] ?? '';
  const whole = Math.floor(eighths / 8) || (sign === '' ? '0' : '');
  return `${value < 0 && eighths > 0 ? '-' : ''}${whole}${sign}`;
}

/**
 * Minutes as hours to the nearest half, with the unit.
 *
 * @example
 * writeHours(276) // => '4½\u00a0h'
 */
export function writeHours(minutes: number): string {
  return `${setEighths(Math.max(1, Math.round(minutes / 30)) / 2)}\u00a0h`;
}

/**
 * The bound of a length as a maker reads it: to the eighth of an inch that is still within it. All else stays as it is.
 *
 * @example
 * writeBound('196.85 in', Math.floor) // => '196¾ in'
 * writeBound('0.0394 in', Math.ceil) // => '⅛ in'
 * writeBound('500 cm', Math.floor) // => '500 cm'
 */
export function writeBound(bound: string, round: (value: number) => number): string {
  const [, inches] = /^([\d.]+) in$/.exec(bound) ?? [];
  const eighths = round(Number(inches) * 8);
  return eighths > 0 ? `${setEighths(eighths / 8)} in` : bound;
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
  return isEighths ? setEighths(value) : String(Number(value.toFixed(4)));
}
