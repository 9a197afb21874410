import { describe, expect, test } from 'vitest';
import type { ClothOffer, PlanRequest } from '#core/contract.ts';
import { resolvePlan } from '#core/wish/resolve-plan.ts';

const QUARTER = { kind: 'pieces', id: 'quarter', width: 21, length: 18, count: 1 } as const;
const CHARM = { kind: 'pieces', id: 'charm', width: 5, length: 10, count: 42 } as const;
const BOLT = { kind: 'roll', id: 'bolt' } as const;

function read(offers: readonly ClothOffer[], rest: Partial<PlanRequest> = {}) {
  const layers = [{ role: 'backing' }, { role: 'top', offers }] as const;
  return resolvePlan({ target: { width: 40, height: 50 }, layers, ...rest });
}
function faultsOf(...asked: Parameters<typeof read>) {
  const outcome = read(...asked);
  return outcome.ok ? [] : outcome.faults;
}

describe('checkOffers', () => {
  test('checkOffers refuses flat pieces that give no square of the size asked for', () => {
    expect(faultsOf([QUARTER, CHARM], { block: { cut: 8.5 } })).toEqual([
      {
        code: 'too-small',
        path: ['layers', 1, 'offers', 1, 'width'],
        expected: '8.5 in',
        received: '5 in',
      },
    ]);
    expect(faultsOf([CHARM], { block: { cut: 5 } })).toEqual([]);
    expect(faultsOf([CHARM, BOLT], { block: { cut: 11 } })).toHaveLength(2);
  });

  test('checkOffers asks for room for the least of the sizes to consider, the ones without a face aside', () => {
    expect(faultsOf([CHARM])).toMatchObject([{ expected: '6 in' }]);
    expect(faultsOf([CHARM], { cuts: [5, 8] })).toMatchObject([
      { code: 'too-large', path: ['cuts', 1], expected: '5 in', received: '8 in' },
    ]);
    expect(faultsOf([CHARM, BOLT], { cuts: [5, 8] })).toEqual([]);
    const seam = { seam: 3, snipDepth: 1 };
    expect(faultsOf([{ ...CHARM, width: 6.25 }], { block: seam })).toMatchObject([
      { expected: '6.5 in' },
    ]);
  });

  test('checkOffers counts what a prewash takes, rounded so that what it names will do', () => {
    const layer = { role: 'top', prewashed: true, shrink: { length: 0, width: 7 } } as const;
    const faults = (width: number) => {
      const offers = [{ ...QUARTER, width }];
      const read = resolvePlan({
        target: { columns: 3, rows: 3 },
        layers: [{ ...layer, offers }, { role: 'backing' }],
      });
      return read.ok ? [] : read.faults;
    };
    expect(faults(9)).toMatchObject([{ code: 'too-small', expected: '9.1398 in' }]);
    expect(faults(9.1398)).toEqual([]);
  });

  test('checkOffers points at a cut where it stood, and leaves usual ones that nothing gives out in silence', () => {
    const squares = { ...QUARTER, width: 10, length: 10 };
    expect(faultsOf([squares], { cuts: [12, 9, 11] }).map(({ path }) => path.join('.'))).toEqual([
      'cuts.2',
      'cuts.0',
    ]);
    const outcome = read([squares]);
    expect(outcome.ok).toBe(true);
  });

  test('checkOffers judges nothing by a part that could not be read', () => {
    expect(faultsOf([CHARM], { block: { cut: 'x' } })).toHaveLength(1);
    expect(faultsOf([{ ...CHARM, width: 'x' }], { block: { cut: 8.5 } })).toHaveLength(1);
  });
});
