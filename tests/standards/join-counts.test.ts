/**
 * Join counts and Moran's I against worked examples.
 *
 * The moments of join counts under non-free sampling are those of Moran (1948) and of Cliff and Ord
 * (Spatial Processes, 1981, pages 18 to 20; from memory); each row of the table equals a full
 * enumeration of all ways to lay the same blocks. The 4×4 halves with 10, 4 and 10 joins of 24 are also
 * the example of the documentation of PySAL (from memory). Moran's I: jalt.online, moran.html (formula
 * as published); the values below follow from it by hand.
 */
import { describe, expect, test } from 'vitest';
import { countJoins } from '#core/layout/count-joins.ts';
import { listJoins } from '#core/layout/list-joins.ts';
import { measureMoran } from '#core/layout/measure-moran.ts';
import { startRandom } from '#core/layout/start-random.ts';

const HALVES = '1100 1100 1100 1100';
const CHECKER = '1010 0101 1010 0101';

/** Grid, neighbours, joins, black and white joins, then mean and variance of the black ones. */
const TABLE = [
  ['010 101 010', 'sides', 12, 0, 0, 2, 50 / 63],
  [HALVES, 'sides', 24, 10, 10, 28 / 5, 608 / 325],
  [CHECKER, 'sides', 24, 0, 0, 28 / 5, 608 / 325],
  [HALVES, 'corners', 42, 16, 16, 49 / 5, 1657 / 325],
  [CHECKER, 'corners', 42, 9, 9, 49 / 5, 1657 / 325],
  ['1001 0100 1010', 'sides', 17, 0, 4, 85 / 33, 1190 / 1089],
] as const;

/** And of the joins of unlike neighbours: how many, mean, variance, z. */
const UNLIKE = [
  ['010 101 010', 'sides', 12, 20 / 3, 50 / 21, 3.4564],
  [HALVES, 'sides', 4, 64 / 5, 5216 / 975, -3.8047],
  [CHECKER, 'sides', 24, 64 / 5, 5216 / 975, 4.8423],
  [HALVES, 'corners', 10, 112 / 5, 2208 / 325, -4.7573],
  [CHECKER, 'corners', 24, 112 / 5, 2208 / 325, 0.6138],
  ['1001 0100 1010', 'sides', 13, 595 / 66, 15_113 / 4356, 2.1393],
] as const;

function readGrid(text: string, touch: 'corners' | 'sides') {
  const rows = text.split(' ');
  const joins = listJoins({ columns: rows[0]?.length ?? 0, rows: rows.length }, touch);
  return { joins, black: [...rows.join('')].map((sign) => sign === '1') };
}

describe('countJoins', () => {
  test.each(TABLE)(
    'countJoins(%s, %s): %i joins, %i black, %i white',
    (text, touch, all, blacks, whites, mean, variance) => {
      const { joins, black } = readGrid(text, touch);
      expect(joins.pairs).toHaveLength(all);
      const found = countJoins(joins, black);
      expect(found.observed).toBe(blacks);
      expect(
        countJoins(
          joins,
          black.map((one) => !one),
        ).observed,
      ).toBe(whites);
      expect(found.expected).toBeCloseTo(mean, 12);
      expect(found.variance).toBeCloseTo(variance, 12);
      expect(found.z).toBeCloseTo((blacks - mean) / Math.sqrt(variance), 12);
    },
  );

  test.each(UNLIKE)(
    'joins of unlike neighbours in %s (%s) follow from the like ones',
    (text, touch, unlike, mean) => {
      const { joins, black } = readGrid(text, touch);
      const like = [black, black.map((one) => !one)].map((shows) => countJoins(joins, shows));
      const observed = like.reduce((sum, one) => sum + one.observed, 0);
      expect(joins.pairs.length - observed).toBe(unlike);
      const expected = like.reduce((sum, one) => sum + one.expected, 0);
      expect(joins.pairs.length - expected).toBeCloseTo(mean, 12);
    },
  );

  // Mean of all like joins, J·Σk(k − 1)/(n(n − 1)); own derivation from the published moments.
  test.each([
    [5, 4, [4, 4, 4, 4, 4], 'sides', 93 / 19],
    [5, 4, [4, 4, 4, 4, 4], 'corners', 165 / 19],
    [8, 6, Array<number>(6).fill(8), 'sides', 574 / 47],
    [8, 6, Array<number>(6).fill(8), 'corners', 1064 / 47],
    [8, 6, Array<number>(4).fill(12), 'sides', 902 / 47],
    [8, 6, Array<number>(4).fill(12), 'corners', 1672 / 47],
  ] as const)(
    'like joins of a %i×%i quilt with %j blocks (%s) are %f on the mean',
    (columns, rows, counts, touch, mean) => {
      const joins = listJoins({ columns, rows }, touch);
      const expected = counts.map((count) => {
        const shows = Array.from({ length: columns * rows }, (_, at) => at < count);
        return countJoins(joins, shows).expected;
      });
      expect(expected.reduce((sum, one) => sum + one, 0)).toBeCloseTo(mean, 10);
    },
  );
});

describe('measureMoran', () => {
  test.each([
    [CHECKER, 'sides', -1],
    [HALVES, 'sides', 2 / 3],
    [CHECKER, 'corners', -1 / 7],
    [HALVES, 'corners', 11 / 21],
  ] as const)('measureMoran(%s, %s) is %f, expected -1/15', (text, touch, moran) => {
    const { joins, black } = readGrid(text, touch);
    const found = measureMoran(joins, black.map(Number));
    expect(found?.moran).toBeCloseTo(moran, 12);
    expect(found?.expected).toBeCloseTo(-1 / 15, 12);
  });
});

describe('against chance itself', () => {
  const SHUFFLES = 100_000;
  const grid = { columns: 6, rows: 5 };
  const blocks = [...'AAAAAAAAABBBBBBBBCCCCCCCDDDDDD'];
  const values: Readonly<Record<string, number>> = { A: 10, B: 35, C: 60, D: 95 };

  test.each(['sides', 'corners'] as const)(
    'mean and variance (%s) agree with 100,000 seeded shuffles',
    (touch) => {
      const joins = listJoins(grid, touch);
      const draw = startRandom(41);
      const own = [...blocks];
      const seen = { like: [0, 0], moran: [0, 0] };
      const keep = (into: number[], value: number) => {
        into[0] = (into[0] ?? 0) + value;
        into[1] = (into[1] ?? 0) + value ** 2;
      };
      for (let turn = 0; turn < SHUFFLES; turn += 1) {
        for (let at = own.length - 1; at > 0; at -= 1) {
          const other = draw(at + 1);
          [own[at], own[other]] = [own[other] ?? '', own[at] ?? ''];
        }
        keep(
          seen.like,
          joins.pairs.filter(([one, other]) => own[one] === 'A' && own[other] === 'A').length,
        );
        keep(
          seen.moran,
          measureMoran(
            joins,
            own.map((letter) => values[letter] ?? 0),
          )?.moran ?? 0,
        );
      }
      const like = countJoins(
        joins,
        own.map((letter) => letter === 'A'),
      );
      const moran = measureMoran(
        joins,
        own.map((letter) => values[letter] ?? 0),
      );
      for (const [[sum = 0, squares = 0], expected, variance] of [
        [seen.like, like.expected, like.variance],
        [seen.moran, moran?.expected ?? 0, moran?.variance ?? 0],
      ] as const) {
        const mean = sum / SHUFFLES;
        // Four standard errors of the mean; and of a variance, with room for a heavy tail.
        expect(Math.abs(mean - expected)).toBeLessThan(4 * Math.sqrt(variance / SHUFFLES));
        expect(Math.abs(squares / SHUFFLES - mean ** 2 - variance) / variance).toBeLessThan(0.03);
      }
    },
  );
});
