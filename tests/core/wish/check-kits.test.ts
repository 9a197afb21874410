import { describe, expect, test } from 'vitest';
import type { KitBolt, KitsRequest, Print } from '#core/contract.ts';
import { resolveKits } from '#core/wish/resolve-kits.ts';

const bolt = (own: Partial<KitBolt> = {}): KitBolt => ({
  id: 'a',
  role: 'top',
  width: 44,
  length: 360,
  ...own,
});
const target = { columns: 3, rows: 4 };
const faultsOf = (own: Partial<KitsRequest>) => {
  const read = resolveKits({ plan: { target }, bolts: [bolt()], ...own });
  return read.ok ? [] : read.faults;
};
const named = (prints: readonly Print[]) => ({
  target,
  layers: [{ role: 'top' as const, prints }, { role: 'backing' as const }],
});

describe('checkKits', () => {
  test('checkKits refuses a bolt narrower than a block between its selvages', () => {
    const plan = { target, block: { cut: 10 } };
    expect(faultsOf({ plan, bolts: [bolt({ width: 11 })] })).toEqual([]);
    expect(faultsOf({ plan, bolts: [bolt({ width: 10.9 })] })).toEqual([
      {
        code: 'roll-too-narrow',
        path: ['bolts', 0, 'width'],
        expected: '10 in',
        received: '9.9 in',
      },
    ]);
  });

  test('checkKits goes by the smallest block where the size is still to be chosen', () => {
    const plan = { target: { width: 40, height: 50 } };
    expect(faultsOf({ plan, bolts: [bolt({ width: 7 })] })).toEqual([]);
    expect(faultsOf({ plan, bolts: [bolt({ width: 6.9 })] })).toMatchObject([
      { code: 'roll-too-narrow', expected: '6 in' },
    ]);
  });

  test('checkKits refuses a print that the plan does not name, where it names them', () => {
    const plan = named([{ id: 'Rust' }, { id: 'Moss' }]);
    expect(faultsOf({ plan, bolts: [bolt({ print: 'Moss' })] })).toEqual([]);
    expect(faultsOf({ plan })).toEqual([
      {
        code: 'not-one-of',
        path: ['bolts', 0, 'print'],
        expected: ['Rust', 'Moss'],
        received: 'a',
      },
    ]);
    expect(
      faultsOf({ plan: { target, layers: [{ role: 'top', prints: 2 }, { role: 'backing' }] } }),
    ).toEqual([]);
  });

  test('checkKits refuses a bolt for a layer that is not there, and two bolts of one name', () => {
    expect(faultsOf({ bolts: [bolt({ role: 'middle' }), bolt()] })).toMatchObject([
      { code: 'repeated-id', path: ['bolts', 1, 'id'] },
      { code: 'not-one-of', path: ['bolts', 0, 'role'], expected: ['top', 'backing'] },
    ]);
  });

  test('checkKits refuses spare squares where each print is counted', () => {
    const plan = named([
      { id: 'Rust', count: 6 },
      { id: 'Moss', count: 6 },
    ]);
    const bolts = [bolt({ print: 'Rust' })];
    expect(faultsOf({ plan, bolts })).toEqual([]);
    expect(faultsOf({ plan, bolts, perKit: { spare: 1 } })).toMatchObject([
      { code: 'counts-do-not-sum', path: ['perKit', 'spare'], received: 1 },
    ]);
  });
});
