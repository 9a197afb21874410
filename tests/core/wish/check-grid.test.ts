import { describe, expect, test } from 'vitest';
import type { PlanRequest, Print } from '#core/contract.ts';
import { resolvePlan } from '#core/wish/resolve-plan.ts';

const faultsOf = (request: PlanRequest) => {
  const read = resolvePlan(request);
  return read.ok ? [] : read.faults;
};
const withPrints = (prints: readonly Print[]) => ({
  layers: [{ role: 'top', prints }, { role: 'backing' }] as const,
});
const grid = { columns: 2, rows: 3 };

describe('checkGrid', () => {
  test('checkGrid takes counts that come to the blocks of the grid', () => {
    const prints = [
      { id: 'a', count: 6 },
      { id: 'b', count: 0 },
    ];
    expect(faultsOf({ target: grid, ...withPrints(prints) })).toEqual([]);
  });

  test('checkGrid refuses counts that come to anything else', () => {
    const fault = { code: 'counts-do-not-sum', path: ['layers', 0, 'prints'] };
    const five = [
      { id: 'a', count: 3 },
      { id: 'b', count: 2 },
    ];
    expect(faultsOf({ target: grid, ...withPrints(five) })).toEqual([
      { ...fault, expected: 'a count for every print, 6 in all', received: 5 },
    ]);
    const some = [{ id: 'a', count: 6 }, { id: 'b' }];
    expect(faultsOf({ target: grid, ...withPrints(some) })).toMatchObject([fault]);
  });

  test('checkGrid refuses counts where the grid is still to be chosen', () => {
    const faults = faultsOf({ target: { size: 'throw' }, ...withPrints([{ id: 'a', count: 6 }]) });
    expect(faults).toMatchObject([{ code: 'counts-do-not-sum', received: 6 }]);
    expect(faults[0]?.expected).toContain('columns and rows');
  });

  test('checkGrid refuses more blocks, or a longer side, than a quilt may have', () => {
    const fault = { code: 'quilt-too-large', path: ['target'] };
    expect(faultsOf({ target: { columns: 60, rows: 60 } })).toMatchObject([fault]);
    expect(faultsOf({ target: { columns: 100, rows: 2 } })).toMatchObject([fault]);
    const small = { cut: 3, seam: 1 };
    expect(faultsOf({ target: { width: 190, height: 190 }, block: small })).toMatchObject([fault]);
  });

  test('checkGrid says how large in the unit of the request', () => {
    const large = { columns: 60, rows: 60 };
    expect(faultsOf({ target: large })[0]?.expected).toContain('236 in a side');
    expect(faultsOf({ target: large, unit: 'cm' })[0]?.expected).toContain('600 cm a side');
  });

  test('checkGrid judges the counts beside other faults, but not the size', () => {
    const faults = faultsOf({
      target: { columns: 60, rows: 60 },
      block: { seam: 'x' },
      ...withPrints([{ id: 'a', count: 6 }]),
    });
    expect(faults.map(({ code }) => code)).toEqual(['not-a-length', 'counts-do-not-sum']);
  });
});
