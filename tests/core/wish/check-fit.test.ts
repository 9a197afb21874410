import { describe, expect, test } from 'vitest';
import type { YardageInput } from '#core/contract.ts';
import { checkFit } from '#core/wish/check-fit.ts';
import { startReading } from '#core/wish/reading.ts';

type FabricInput = YardageInput['fabrics'][number];

const FABRIC: FabricInput = {
  id: 'cloth',
  width: 42,
  selvage: 0.5,
  prewash: { length: 0, width: 0 },
  squaring: 1,
  step: 4.5,
  pieces: [{ id: 'long', width: 50, length: 20, count: 1, directional: false }],
};
const QUARTER = { kind: 'pieces', id: 'quarter', width: 21, length: 18, count: 1 } as const;

function faultsOf(own: Partial<FabricInput>) {
  const reading = startReading('in');
  checkFit(reading, { ...FABRIC, ...own }, ['fabrics', 3]);
  return reading.faults;
}

const piece = (width: number, length: number, directional = false) => ({
  pieces: [{ id: 'p', width, length, count: 1, directional }],
});

describe('checkFit', () => {
  test('checkFit takes a piece that fits turned, and names both widths where none does', () => {
    expect(faultsOf({})).toEqual([]);
    expect(faultsOf(piece(50, 20, true))).toEqual([
      {
        code: 'roll-too-narrow',
        path: ['fabrics', 3, 'pieces', 0, 'width'],
        expected: '50 in',
        received: '41 in',
      },
    ]);
    expect(faultsOf(piece(50, 45))).toMatchObject([{ expected: '45 in', received: '41 in' }]);
  });

  test('checkFit counts the shrink of a prewash and the selvages', () => {
    expect(faultsOf(piece(41, 60))).toEqual([]);
    expect(faultsOf({ ...piece(41, 60), prewash: { length: 0, width: 5 } })).toHaveLength(1);
    expect(faultsOf({ ...piece(41, 60), selvage: 0.75 })).toHaveLength(1);
    expect(faultsOf({ selvage: 30 })).toMatchObject([{ received: '0 in' }]);
  });

  test('checkFit of flat pieces looks at both of their sides', () => {
    expect(faultsOf({ ...piece(18, 21), offers: [QUARTER] })).toEqual([]);
    expect(faultsOf({ ...piece(18, 21, true), offers: [QUARTER] })).toHaveLength(1);
    expect(faultsOf({ ...piece(20, 20), offers: [QUARTER] })).toMatchObject([
      { received: '21 in' },
    ]);
    const roll = { kind: 'roll', id: 'roll', step: 4.5, least: 4.5 } as const;
    expect(faultsOf({ ...piece(20, 20), offers: [QUARTER, roll] })).toEqual([]);
  });
});
