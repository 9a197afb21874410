import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { writePair } from '#core/plan/write-plan.ts';
import { resolvePlan } from '#core/wish/resolve-plan.ts';
import { explainedFor } from '../../support/plans.ts';
import { planRequests } from '../../support/requests.ts';

/** Every number in a value, with its path. */
function listNumbers(value: unknown, path = ''): readonly (readonly [string, number])[] {
  if (typeof value === 'number') return [[path, value]];
  if (typeof value !== 'object' || value === null) return [];
  return Object.entries(value).flatMap(([key, part]) => listNumbers(part, `${path}.${key}`));
}

describe('writePlan', () => {
  test('writePlan gives numbers of at most four decimals, each finite, none minus nought', () => {
    fc.assert(
      fc.property(planRequests, (request) => {
        fc.pre(resolvePlan(request).ok);
        for (const [path, number] of listNumbers(explainedFor(request).figures)) {
          expect([path, Number.isFinite(number)]).toEqual([path, true]);
          expect([path, Object.is(number, -0)]).toEqual([path, false]);
          expect([path, Number(number.toFixed(4))]).toEqual([path, number]);
        }
      }),
      { numRuns: 40 },
    );
  });

  test('writePlan speaks yards and pounds with inches, metres and kilograms with centimetres', () => {
    const inches = explainedFor({ target: { columns: 4, rows: 5 } }).figures;
    expect([inches.thread.unit, inches.weight.unit]).toEqual(['yd', 'lb']);
    expect(new Set(inches.fabrics.map(({ buy }) => buy.unit))).toEqual(new Set(['yd']));
    const metric = explainedFor({ unit: 'cm', target: { columns: 4, rows: 5 } }).figures;
    expect([metric.thread.unit, metric.weight.unit]).toEqual(['m', 'kg']);
    expect(new Set(metric.fabrics.map(({ buy }) => buy.unit))).toEqual(new Set(['m']));
  });

  test('writePlan marks just one option as chosen, that of the answer', () => {
    const { figures } = explainedFor({ target: { width: 40, height: 50 } });
    const chosen = figures.options.filter((option) => option.chosen);
    expect(chosen).toHaveLength(1);
    expect(chosen[0]).toMatchObject({
      cut: figures.block.cut,
      columns: figures.grid.columns,
      rows: figures.grid.rows,
      minutes: figures.time.total,
      washed: { width: figures.size.washed.width, height: figures.size.washed.height },
    });
  });

  test('writePlan has shrinkage negative and the fit signed: washed less the wish', () => {
    const { figures } = explainedFor({ target: { width: 40, height: 50 } });
    expect(figures.size.change.width).toBeLessThan(0);
    expect(figures.fit.width).toBeCloseTo(figures.size.washed.width - 40, 4);
    expect(figures.fit.height).toBeCloseTo(figures.size.washed.height - 50, 4);
  });

  test('writePlan measures the fit before washing where that was asked for', () => {
    const { figures } = explainedFor({ target: { width: 40, height: 50, at: 'sewn' } });
    expect(figures.wish.at).toBe('sewn');
    expect(figures.fit.width).toBeCloseTo(figures.size.sewn.width - 40, 4);
  });
});

describe('writePair', () => {
  test('writePair rounds to four decimals', () => {
    expect(writePair({ width: 100, height: 0.001 }, 'in')).toEqual({ width: 3.937, height: 0 });
    expect(writePair({ width: 123.456789, height: 10 }, 'cm')).toEqual({
      width: 12.3457,
      height: 1,
    });
  });
});
