import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { nameRow } from '#core/layout/name-row.ts';
import { placeBobbins } from '#core/sewing/place-bobbins.ts';
import { planThread } from '#core/sewing/plan-thread.ts';

const block = { cut: 120, seam: 10, snipDepth: 5, snipPitch: 6 };
const stitching = { length: 2.5, tail: 75, link: 12.5, chained: true, borderPasses: 2 };
const cases = fc.record({
  columns: fc.integer({ min: 1, max: 40 }),
  rows: fc.integer({ min: 1, max: 40 }),
  chained: fc.boolean(),
  borderPasses: fc.integer({ min: 1, max: 6 }),
  bobbin: fc.integer({ min: 1000, max: 500_000 }),
});

type Case = typeof cases extends fc.Arbitrary<infer One> ? One : never;

function place({ columns, rows, ...how }: Case) {
  const grid = { columns, rows };
  const plan = planThread({ grid, block, thickness: 1 }, { ...stitching, ...how });
  const changes = placeBobbins(plan.chains, { grid, ...how }, plan.bobbins);
  return { plan, changes };
}

describe('placeBobbins', () => {
  test('placeBobbins finds the block at which the thread on the bobbin is used up', () => {
    // Ten seams of 200 mm, half of it from the bobbin: 500 mm last five of them.
    const run = { step: 'quilt-first', chains: 1, seams: 10, thread: 2000, inSeams: 2000 } as const;
    const quilt = { grid: { columns: 5, rows: 2 }, borderPasses: 1 };
    expect(placeBobbins([run], { ...quilt, bobbin: 500 }, 2)).toEqual([
      { step: 'quilt-first', changes: 1, after: [5] },
    ]);
    expect(placeBobbins([run], { ...quilt, bobbin: 560 }, 2)[0]?.after).toEqual([5]);
    expect(placeBobbins([run], { ...quilt, bobbin: 1000 }, 1)).toEqual([]);
  });

  test('placeBobbins counts a change at the end of a chain as one before the next', () => {
    const runs = (['quilt-first', 'quilt-second'] as const).map((step) => {
      return { step, chains: 1, seams: 4, thread: 800, inSeams: 800 };
    });
    const quilt = { grid: { columns: 2, rows: 2 }, borderPasses: 1, bobbin: 400 };
    expect(placeBobbins(runs, quilt, 2)).toEqual([
      { step: 'quilt-second', changes: 1, after: [0] },
    ]);
  });

  test('placeBobbins names the row, of joins and of seams between rows', () => {
    const grid = { columns: 4, rows: 3 };
    const joins = { step: 'join', chains: 3, seams: 3, thread: 600, inSeams: 1800 } as const;
    // 900 mm of bobbin thread over nine joins: 500 mm are used up after five, the second of row B.
    expect(placeBobbins([joins], { grid, borderPasses: 1, bobbin: 500 }, 2)).toEqual([
      { step: 'join', row: 'B', changes: 1, after: [2] },
    ]);
    const rows = { step: 'join-rows', chains: 2, seams: 1, thread: 800, inSeams: 1600 } as const;
    // 400 mm a seam: 500 mm reach a quarter of the second seam, one block of four, as row C is joined on.
    expect(placeBobbins([rows], { grid, borderPasses: 1, bobbin: 500 }, 2)).toEqual([
      { step: 'join-rows', row: 'C', changes: 1, after: [1] },
    ]);
  });

  test('placeBobbins has one change fewer than bobbins, whatever the quilt', () => {
    fc.assert(
      fc.property(cases, (one) => {
        const { plan, changes } = place(one);
        expect(changes.reduce((sum, own) => sum + own.changes, 0)).toBe(plan.bobbins - 1);
      }),
    );
  });

  test('placeBobbins stays within its steps, rows and blocks, in the order of the work', () => {
    fc.assert(
      fc.property(cases, (one) => {
        const { columns, rows, borderPasses } = one;
        const { plan, changes } = place(one);
        const steps = plan.chains.map(({ step }) => step);
        const order = changes.map(({ step }) => steps.indexOf(step));
        expect(order).toEqual(order.toSorted((a, b) => a - b));
        const most: Readonly<Record<string, number>> = {
          join: columns - 1,
          'join-rows': columns,
          border: borderPasses * 2 * (columns + rows),
        };
        for (const { step, row, changes: count, after } of changes) {
          const names = Array.from({ length: rows }, (_, index) => nameRow(index));
          if (row !== undefined) expect(names).toContain(row);
          expect(row === undefined).toBe(step !== 'join' && step !== 'join-rows');
          expect(after.length).toBeLessThanOrEqual(count);
          expect(Math.min(...after)).toBeGreaterThanOrEqual(0);
          expect(Math.max(...after)).toBeLessThan(most[step] ?? columns * rows);
          expect(after).toEqual(after.toSorted((a, b) => a - b));
        }
      }),
    );
  });
});
