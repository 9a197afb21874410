import { describe, expect, test } from 'vitest';
import type { KitsRequest } from '#core/contract.ts';
import { specifyKits } from '#core/kits/kits-spec.ts';
import { resolveKits } from '#core/wish/resolve-kits.ts';

const specify = (own: Partial<KitsRequest>) => {
  const read = resolveKits({
    plan: { target: { columns: 3, rows: 3 }, block: { cut: 10 } },
    bolts: [{ id: 'a', role: 'top', width: 41, length: 21 }],
    ...own,
  });
  if (!read.ok) throw new Error(JSON.stringify(read.faults));
  return specifyKits(read.value.input);
};

describe('specifyKits', () => {
  test('specifyKits turns bolts into millimetres and counts their squares', () => {
    const { bolts, stock, prints } = specify({});
    expect(bolts[0]).toMatchObject({ width: 1041.4, length: 533.4, selvage: 12.7, squaring: 25.4 });
    // floor(40 / 10)·floor(20 / 10) = 8.
    expect(prints).toEqual(['a']);
    expect(stock).toEqual({
      prints: [{ squares: 8, most: 9 }],
      others: [{ role: 'backing', squares: 0, perKit: 9 }],
      perKit: 9,
      distinct: 1,
    });
  });

  test('specifyKits adds up bolts of one print', () => {
    const bolt = { role: 'top' as const, width: 41, length: 21, print: 'Rust' };
    const { stock } = specify({
      bolts: [
        { id: 'a', ...bolt },
        { id: 'b', ...bolt },
      ],
    });
    expect(stock.prints).toEqual([{ squares: 16, most: 9 }]);
  });

  test('specifyKits takes two middle layers for two squares of the middle a block', () => {
    const layers = (['top', 'middle', 'middle', 'backing'] as const).map((role) => ({ role }));
    const plan = { target: { columns: 3, rows: 3 }, block: { cut: 10 }, layers };
    expect(specify({ plan }).stock.others).toEqual([
      { role: 'middle', squares: 0, perKit: 18 },
      { role: 'backing', squares: 0, perKit: 9 },
    ]);
  });

  test('specifyKits washes cloth before it is cut where the plan does', () => {
    const shrink = { length: 10, width: 5 };
    const layers = [
      { role: 'top' as const, prewashed: true, shrink },
      { role: 'backing' as const },
    ];
    const plan = { target: { columns: 3, rows: 3 }, block: { cut: 10 }, layers };
    // 41·0.95 − 1 = 37.95 and 21·0.9 − 1 = 17.9: 3·1.
    expect(specify({ plan }).stock.prints).toEqual([{ squares: 3, most: 9 }]);
  });

  test('specifyKits knows prints that the plan names though no bolt shows them', () => {
    const prints = [{ id: 'a' }, { id: 'Moss' }];
    const layers = [{ role: 'top' as const, prints }, { role: 'backing' as const }];
    const plan = { target: { columns: 3, rows: 3 }, block: { cut: 10 }, layers };
    expect(specify({ plan, perKit: { mostOfOne: 5 } }).stock.prints).toEqual([
      { squares: 8, most: 5 },
      { squares: 0, most: 5 },
    ]);
  });
});
