import { writeHours } from './write-figures.ts';

/** As many minutes are told as minutes; more as hours. */
const MOST = 90;

/**
 * Minutes of work as one says them: to five minutes, from an hour and a half on as hours to the nearest half.
 *
 * @example
 * writeTime('en', 42) // => '45\u00a0min'
 * writeTime('en', 276) // => '4½\u00a0h'
 */
export function writeTime(language: string, minutes: number): string {
  if (minutes >= MOST) return writeHours(minutes);
  const unit = { style: 'unit', unit: 'minute', unitDisplay: 'short' } as const;
  const rounded = Math.ceil(minutes / 5 - 1e-9) * 5;
  return new Intl.NumberFormat(language, unit).format(rounded).replace(' ', '\u00a0');
}
