/**
 * Cutting strips and rounding purchases.
 * - Sold by the eighth of a yard in the US and by 10 cm elsewhere, some by 25 cm; 40 to 42 in usable of
 *   a roll of 42 to 45: common practice, no source.
 * - How many squares a yard gives: counted here by laying them out, arithmetic.
 * - Wanted 60 in after a wash that takes 5 %: cut 63.1579 in; 70 after 3 %: 72.1649: arithmetic.
 */
import { describe, expect, test } from 'vitest';
import { cutStrips } from '#core/cloth/cut-strips.ts';
import { roundPurchase } from '#core/cloth/round-purchase.ts';
import { leastStrips } from '#core/cloth/strips/least-strips.ts';
import { usableWidth } from '#core/cloth/usable-width.ts';

const INCH = 25.4;
const NONE = { length: 0, width: 0 };

describe('usableWidth', () => {
  test.each([42, 43])(
    'usableWidth(%d in, selvages 1/2 in) lies in the 40 to 42 in that people plan on (practice)',
    (inches) => {
      const usable =
        usableWidth({ width: inches * INCH, selvage: 0.5 * INCH, prewash: NONE }) / INCH;
      expect(usable).toBeGreaterThanOrEqual(40);
      expect(usable).toBeLessThanOrEqual(42);
    },
  );
});

describe('cutStrips', () => {
  test.each([
    [5, 8, 7],
    [6, 6, 6],
    [8, 5, 4],
    [10, 4, 3],
  ])(
    'cutStrips(%d in squares from a yard of 40 in usable) gives %d in each of %d strips (counted)',
    (side, across, down) => {
      const roll = { width: 40 * INCH, selvage: 0, prewash: NONE };
      const order = { roll, across: side * INCH, along: side * INCH, squaring: 0 };
      const full = cutStrips({ ...order, pieces: across * down });
      expect(full).toMatchObject({ perStrip: across, strips: down });
      expect(full.length).toBeLessThanOrEqual(36 * INCH + 1e-9);
      const more = cutStrips({ ...order, pieces: across * down + 1 });
      expect(more.length).toBeGreaterThan(36 * INCH);
    },
  );

  test.each([
    [60, 0.05, 63.1579],
    [70, 0.03, 72.1649],
  ])(
    'cutStrips(%d in after a prewash that takes %d) asks for %d in (arithmetic)',
    (wanted, rate, cut) => {
      const roll = { width: 42 * INCH, selvage: 0, prewash: { length: rate, width: 0 } };
      const order = { roll, across: 10 * INCH, along: 10 * INCH, squaring: 0 };
      const { length } = cutStrips({ ...order, pieces: (wanted / 10) * 4 });
      expect(length / INCH).toBeCloseTo(cut, 4);
    },
  );
});

describe('leastStrips', () => {
  test('leastStrips(4 of 18 by 22 in from 44 in) is a yard: four fat quarters (practice)', () => {
    const quarter = { across: 22 * INCH, along: 18 * INCH, count: 4, canTurn: true };
    expect(leastStrips([quarter], 44 * INCH).length).toBeCloseTo(36 * INCH, 9);
  });
});

describe('roundPurchase', () => {
  test('roundPurchase to the eighth of a yard buys 4 1/2, 9, 13 1/2 … inches (practice)', () => {
    for (let eighths = 1; eighths <= 40; eighths += 1) {
      const { amount } = roundPurchase(eighths * 4.5 * INCH - 1, 4.5 * INCH, 'in');
      expect(amount).toBe(eighths / 8);
    }
  });

  test('roundPurchase(1.01 m) is 1.1 m by 10 cm and 1.25 m by 25 cm (practice)', () => {
    expect(roundPurchase(1010, 100, 'cm').text).toBe('1.1 m');
    expect(roundPurchase(1010, 250, 'cm').text).toBe('1.25 m');
  });
});
