import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import {
  byFit,
  type Candidate,
  chooseHandiest,
  isSame,
  keepUnbeaten,
  misfit,
  NEAR,
} from '#core/block/rank-options.ts';
import { deepFreeze } from '../../support/deep-freeze.ts';

const washed = { width: 1000, height: 1200 };

function candidate(
  fit: number,
  blocks: number,
  costs: { fabric?: number; minutes?: number } = {},
): Candidate {
  return {
    cut: 200,
    grid: { columns: blocks, rows: 1 },
    washed,
    fit: { width: fit, height: 0 },
    fabric: costs.fabric ?? 5,
    minutes: costs.minutes ?? 300,
  };
}

/** Few distinct figures, so that ties and beaten candidates abound. */
const some = fc
  .record({
    fit: fc.integer({ min: -40, max: 40 }),
    blocks: fc.integer({ min: 1, max: 60 }),
    fabric: fc.integer({ min: 1, max: 4 }),
    minutes: fc.integer({ min: 1, max: 4 }),
  })
  .map(({ fit, blocks, ...costs }) => deepFreeze(candidate(fit, blocks, costs)));
const list = fc.array(some, { minLength: 1, maxLength: 25 }).map(deepFreeze);

describe('misfit', () => {
  test('misfit(-3 by 2) is 3: the worse side whatever its sign', () => {
    expect(misfit({ fit: { width: -3, height: 2 } })).toBe(3);
    expect(misfit({ fit: { width: 1, height: -4 } })).toBe(4);
  });
});

describe('byFit', () => {
  test('byFit puts the closer first, and the fewer blocks where fit is alike', () => {
    expect(byFit(candidate(2, 90), candidate(3, 10))).toBeLessThan(0);
    expect(byFit(candidate(-3, 20), candidate(3, 10))).toBeGreaterThan(0);
    expect(byFit(candidate(3.001, 10), candidate(3, 20))).toBeLessThan(0);
    expect(byFit(candidate(3, 10), candidate(3, 10))).toBe(0);
  });

  test('byFit counts blocks by columns and rows', () => {
    const tall = { ...candidate(3, 2), grid: { columns: 2, rows: 3 } };
    const flat = { ...candidate(3, 5), grid: { columns: 5, rows: 1 } };
    expect(byFit(flat, tall)).toBeLessThan(0);
  });

  test('byFit is an order: no three candidates go round in a circle', () => {
    const close = fc
      .tuple(fc.integer({ min: 0, max: 60 }), fc.integer({ min: 1, max: 4 }))
      .map(([thousandths, blocks]) => candidate(thousandths / 1000, blocks));
    fc.assert(
      fc.property(close, close, close, (one, two, three) => {
        if (byFit(one, two) <= 0 && byFit(two, three) <= 0) {
          expect(byFit(one, three)).toBeLessThanOrEqual(0);
        }
        expect(Math.sign(byFit(one, two))).toBe(0 - Math.sign(byFit(two, one)));
      }),
      { numRuns: 2000 },
    );
  });
});

describe('keepUnbeaten', () => {
  test('keepUnbeaten drops the one that is worse in time and better in nothing', () => {
    const better = candidate(1, 10, { minutes: 100 });
    const worse = candidate(1, 10, { minutes: 200 });
    const cheaper = candidate(9, 10, { fabric: 3, minutes: 200 });
    expect(keepUnbeaten([worse, better, cheaper])).toEqual([better, cheaper]);
  });

  test('keepUnbeaten keeps the first of equals', () => {
    const first = candidate(1, 10);
    const second = candidate(-1, 20);
    expect(keepUnbeaten([first, second])).toEqual([first]);
  });

  test('keepUnbeaten keeps order, and keeping twice changes nothing', () => {
    fc.assert(
      fc.property(list, (all) => {
        const kept = keepUnbeaten(all);
        expect(kept.length).toBeGreaterThan(0);
        expect(kept).toEqual(all.filter((one) => kept.includes(one)));
        expect(keepUnbeaten(kept)).toEqual(kept);
      }),
    );
  });
});

describe('chooseHandiest', () => {
  test('chooseHandiest takes fewer blocks within 2 % of the longer side of the best', () => {
    expect(NEAR * washed.height).toBe(24);
    const best = candidate(0, 90, { minutes: 900 });
    const near = candidate(24, 30, { minutes: 300 });
    const far = candidate(24.1, 10, { minutes: 100 });
    expect(chooseHandiest([best, near, far])).toBe(near);
  });

  test('chooseHandiest takes the better fit of as many blocks', () => {
    const best = candidate(0, 30, { minutes: 400 });
    const other = candidate(10, 30, { minutes: 300 });
    expect(chooseHandiest([best, other])).toBe(best);
  });

  test('chooseHandiest of nothing is a mistake of the caller', () => {
    expect(() => chooseHandiest([])).toThrow('No plan was left');
  });

  test('chooseHandiest is unbeaten, near the best, and no unbeaten near one has fewer blocks', () => {
    fc.assert(
      fc.property(list, (all) => {
        const sorted = all.toSorted(byFit);
        const chosen = chooseHandiest(sorted);
        const near = keepUnbeaten(sorted).filter(
          (one) => misfit(one) <= misfit(sorted[0] ?? one) + 24,
        );
        expect(near).toContain(chosen);
        const fewest = Math.min(...near.map((one) => one.grid.columns));
        expect(chosen.grid.columns).toBe(fewest);
      }),
    );
  });
});

describe('isSame', () => {
  test('isSame by cut and grid alone', () => {
    const one = { cut: 200, grid: { columns: 2, rows: 3 } };
    expect(isSame(one, { ...one })).toBe(true);
    expect(isSame(one, { ...one, cut: 201 })).toBe(false);
    expect(isSame(one, { ...one, grid: { columns: 3, rows: 2 } })).toBe(false);
  });
});
