import { writeMeasure } from './write-figures.ts';

/** One line of a purchase: so much off the roll, or so many packs. */
export interface BoughtLine {
  readonly offer: string;
  readonly unit: 'yd' | 'm' | 'pack';
  readonly amount?: number;
  readonly count?: number;
}

/**
 * What to ask a shop for: lengths off the roll, or packs as it sells them.
 *
 * @example
 * sayBought('en', [{ offer: 'roll', unit: 'yd', amount: 2.375 }]) // => '2⅜\u00a0yd'
 * sayBought('en', [{ offer: 'Fat quarters', unit: 'pack', count: 2 }]) // => '2 × Fat quarters'
 */
export function sayBought(language: string, bought: readonly BoughtLine[]): string {
  return bought
    .map(({ unit, offer, amount = 0, count = 0 }) =>
      unit === 'pack' ? `${count} × ${offer}` : writeMeasure(language, unit, amount),
    )
    .join(' + ');
}
