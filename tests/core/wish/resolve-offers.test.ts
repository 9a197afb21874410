import { describe, expect, test } from 'vitest';
import type { ClothOffer } from '#core/contract.ts';
import { startReading, writeQuery } from '#core/wish/reading.ts';
import { resolveOffers } from '#core/wish/resolve-offers.ts';

const ROLL = { kind: 'roll', id: 'bolt' } as const;
const SQUARES = { kind: 'pieces', id: 'squares', width: '10', length: 10, count: 42 } as const;

function read(...offers: readonly ClothOffer[]) {
  const reading = startReading(undefined);
  const resolved = resolveOffers(reading, { offers, step: 4.5 }, ['offers']);
  const faults = reading.faults.map(({ code, path }) => [code, path.join('.')]);
  return { resolved, faults, query: writeQuery(reading.kept) };
}

describe('resolveOffers', () => {
  test("resolveOffers fills a roll's step with the fabric's, and the least it sells with a step", () => {
    expect(read(ROLL, { ...ROLL, id: 'yards', step: '1 yd', least: '2 yd' })).toEqual({
      faults: [],
      resolved: [
        { kind: 'roll', id: 'bolt', step: 4.5, least: 4.5 },
        { kind: 'roll', id: 'yards', step: 36, least: 72 },
      ],
      query:
        'offers.0.kind=roll&offers.0.id=bolt&offers.1.kind=roll&offers.1.id=yards&offers.1.step=36&offers.1.least=72',
    });
  });

  test('resolveOffers keeps what flat pieces say, prices last', () => {
    expect(read({ ...SQUARES, most: 2, price: 4900 })).toEqual({
      faults: [],
      resolved: [
        { kind: 'pieces', id: 'squares', width: 10, length: 10, count: 42, most: 2, price: 4900 },
      ],
      query:
        'offers.0.kind=pieces&offers.0.id=squares&offers.0.width=10&offers.0.length=10&offers.0.count=42&offers.0.most=2&offers.0.price=4900',
    });
  });

  test('resolveOffers tells the step of a roll that names none where a reason is given', () => {
    const reading = startReading(undefined);
    const offers = [ROLL, { ...ROLL, id: 'own', step: 9 }];
    resolveOffers(reading, { offers, step: 4.5, why: 'Sold so' }, ['offers']);
    const told = reading.assumptions.filter(({ path }) => path.startsWith('offers'));
    expect(told).toMatchObject([{ path: 'offers.0.step', value: 4.5, why: 'Sold so' }]);
  });

  test('resolveOffers wants a price of all or of none', () => {
    expect(read({ ...ROLL, price: 0 }, SQUARES).faults).toEqual([['missing', 'offers.1.price']]);
    expect(read(ROLL, SQUARES).faults).toEqual([]);
  });

  test('resolveOffers finds every fault at once', () => {
    expect(
      read({ ...ROLL, step: 'x' }, { ...SQUARES, width: 0, id: 'bolt' }, { ...ROLL, least: 1e6 })
        .faults,
    ).toEqual([
      ['repeated-id', 'offers.1.id'],
      ['repeated-id', 'offers.2.id'],
      ['not-a-length', 'offers.0.step'],
      ['too-small', 'offers.1.width'],
      ['too-large', 'offers.2.least'],
    ]);
  });
});
