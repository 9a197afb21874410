import { roundTo } from './length.ts';

/** A length as a shop sells it. */
export interface SoldLength {
  readonly amount: number;
  readonly unit: 'yd' | 'm' | 'in' | 'cm';
}

const SMALL =
  'no one two three four five six seven eight nine ten eleven twelve thirteen fourteen fifteen sixteen seventeen eighteen nineteen'.split(
    ' ',
  );
const TENS = '0 10 twenty thirty forty fifty sixty seventy eighty ninety'.split(' ');

/** Eighths as they are spoken: after a whole number, before the name of the unit, and alone before it. */
const EIGHTHS = [
  ['', ''],
  ['an eighth', 'an eighth of a'],
  ['a quarter', 'a quarter of a'],
  ['three eighths', 'three eighths of a'],
  ['a half', 'half a'],
  ['five eighths', 'five eighths of a'],
  ['three quarters', 'three quarters of a'],
  ['seven eighths', 'seven eighths of a'],
] as const;

const NAMES = { yd: ['yard', 'yards'], in: ['inch', 'inches'] } as const;

/**
 * A length as it is spoken over the cutting counter: yards and inches in English words to the nearest eighth, metres
 * and centimetres as metres with the centimetres behind them. The trade's way of speaking; common practice, no source.
 *
 * @param amount zero or more
 *
 * @example
 * speakLength({ amount: 2.375, unit: 'yd' }) // => 'two and three eighths yards'
 * speakLength({ amount: 0.5, unit: 'yd' }) // => 'half a yard'
 * speakLength({ amount: 2.2, unit: 'm' }) // => '2 m 20'
 * speakLength({ amount: 0.8, unit: 'm' }) // => '80 cm'
 */
export function speakLength({ amount, unit }: SoldLength): string {
  if (unit === 'yd' || unit === 'in') return speakEighths(amount, NAMES[unit]);
  const centimetres = roundTo(unit === 'm' ? amount * 100 : amount, 1);
  const metres = Math.floor(centimetres / 100);
  const rest = roundTo(centimetres - 100 * metres, 1);
  if (metres === 0) return `${rest} cm`;
  if (rest === 0) return `${metres} m`;
  return `${metres} m ${rest < 10 ? `0${rest}` : rest}`;
}

function speakEighths(amount: number, [one, many]: readonly [string, string]): string {
  const count = Math.round(amount * 8);
  const whole = Math.floor(count / 8);
  const [after, alone] = EIGHTHS[count % 8] ?? EIGHTHS[0];
  if (whole === 0 && alone !== '') {
    return `${alone}${one === 'inch' ? 'n' : ''} ${one}`;
  }
  const said = after === '' ? speakWhole(whole) : `${speakWhole(whole)} and ${after}`;
  return `${said} ${count === 8 ? one : many}`;
}

/** A whole number in words up to ninety-nine, in figures beyond. */
function speakWhole(whole: number): string {
  if (whole > 99) return `${whole}`;
  if (whole < 20) return `${SMALL[whole]}`;
  const one = whole % 10 === 0 ? '' : `-${SMALL[whole % 10]}`;
  return `${TENS[Math.floor(whole / 10)]}${one}`;
}
