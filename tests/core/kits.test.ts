import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import type { KitBolt, KitsRequest, Length } from '#core/contract.ts';
import { planKits } from '#core/kits.ts';
import { resolveKits } from '#core/wish/resolve-kits.ts';
import { deepFreeze } from '../support/deep-freeze.ts';

const plan = { target: { columns: 4, rows: 5 }, block: { cut: 8.5 } };
const top = (id: string, length: Length, own: Partial<KitBolt> = {}): KitBolt => ({
  id,
  role: 'top',
  width: 44,
  length,
  ...own,
});
const flannel: KitBolt = { id: 'flannel', role: 'backing', width: 44, length: 1000 };
const answer = (request: Omit<KitsRequest, 'plan'> & Partial<Pick<KitsRequest, 'plan'>>) => {
  const read = resolveKits({ plan, ...request });
  if (!read.ok) throw new Error(JSON.stringify(read.faults));
  return planKits(deepFreeze(read.value));
};

describe('planKits', () => {
  test('planKits of four equal bolts: by hand 42 strips of 5, 840 squares, 42 kits of 20', () => {
    const bolts = [...['a', 'b', 'c', 'd'].map((id) => top(id, 360)), { ...flannel, length: 2000 }];
    const made = answer({ bolts });
    // Backing: floor(1999 / 8.5) = 235 strips of 5 = 1175 squares, 58 kits.
    expect(made).toMatchObject({
      grid: { columns: 4, rows: 5, blocks: 20 },
      cut: 8.5,
      squares: 20,
      most: 42,
      made: 42,
      limitedBy: ['top'],
    });
    expect(made.kits).toEqual([
      { count: 42, prints: ['a', 'b', 'c', 'd'].map((id) => ({ id, blocks: 5 })) },
    ]);
    expect(made.cutting[0]).toEqual({
      id: 'a',
      role: 'top',
      print: 'a',
      perStrip: 5,
      strips: 42,
      cut: 42,
      used: 210,
      length: 358,
    });
    expect(made.left[0]).toEqual({ id: 'a', length: 2, squares: 0 });
  });

  test('planKits without a backing makes none, and says what to buy for those wanted', () => {
    const made = answer({ bolts: ['a', 'b', 'c', 'd'].map((id) => top(id, 360)), kits: 10 });
    expect(made).toMatchObject({ most: 0, made: 0, limitedBy: ['backing'], kits: [] });
    // 200 squares, 40 strips of floor((42 − 1) / 8.5) = 4: 50 strips, 426 in, 11 7/8 yd.
    expect(made.buyMore).toEqual([
      {
        role: 'backing',
        squares: 200,
        strips: 50,
        width: 42,
        length: 426,
        buy: { amount: 11.875, unit: 'yd', text: '11 7/8 yd' },
      },
    ]);
    expect(made).not.toHaveProperty('money');
  });

  test('planKits makes those wanted and leaves the rest on the bolts', () => {
    const bolts = [...['a', 'b', 'c', 'd'].map((id) => top(id, 360)), flannel];
    const made = answer({ bolts, kits: 3 });
    expect(made.made).toBe(3);
    expect(made).not.toHaveProperty('buyMore');
    expect(made.cutting.map(({ cut, used }) => [cut, used])).toEqual([
      [3, 15],
      [3, 15],
      [3, 15],
      [3, 15],
      [12, 60],
    ]);
  });

  test('planKits of a plan that counts each print keeps those counts in every kit', () => {
    const prints = [
      { id: 'Rust', count: 12 },
      { id: 'Moss', count: 8 },
    ];
    const layers = [{ role: 'top' as const, prints }, { role: 'backing' as const }];
    const bolts = [top('Rust', 360), top('Moss', 80), flannel];
    // Moss: floor(79 / 8.5) = 9 strips of 5 = 45 squares, 5 kits of 8.
    const made = answer({ plan: { ...plan, layers }, bolts });
    expect(made.kits).toEqual([
      {
        count: 5,
        prints: [
          { id: 'Rust', blocks: 12 },
          { id: 'Moss', blocks: 8 },
        ],
      },
    ]);
    expect(made.limitedBy).toEqual(['mostOfOne']);
  });

  test('planKits: spare squares are in each kit and each layer', () => {
    const bolts = [...['a', 'b', 'c', 'd'].map((id) => top(id, 360)), flannel];
    const made = answer({ bolts, perKit: { spare: 1 } });
    expect(made).toMatchObject({ squares: 21, most: 27, limitedBy: ['backing'] });
    // Backing: floor(999 / 8.5) = 117 strips of 5 = 585 squares, 27 kits of 21.
  });

  test('planKits: money by hand, in cents', () => {
    const bolts = [
      ...['a', 'b', 'c', 'd'].map((id) => top(id, 360, { cost: 900 })),
      { ...flannel, cost: 600 },
    ];
    const costs = { packaging: 75, labour: 400, margin: 40 };
    const made = answer({ bolts, kits: 10, costs });
    // Each print: 50 squares, 10 strips, 86 in; backing 200 squares, 40 strips, 341 in.
    // (4·86·900 + 341·600) / 36 / 10 = 1428.33; and 475 = 1903.33; / 0.6 = 3172.22.
    expect(made.money).toEqual({
      currency: 'USD',
      decimals: 2,
      materials: 1428,
      labour: 400,
      packaging: 75,
      overhead: 0,
      cost: 1903,
      price: 3172,
      marginPercent: 40.01,
    });
  });

  test('planKits: weight of a kit is N·c²·gsm, 20 blocks of 8.5 in in 310 g/m²', () => {
    // 20·0.2159²·310 = 289.00 g = 0.6371 lb.
    expect(answer({ bolts: [top('a', 360)] }).weight).toEqual({ dry: 0.6371, unit: 'lb' });
  });

  test('planKits in centimetres with a plan in inches cuts the same', () => {
    const inches = ['a', 'b', 'c', 'd'].map((id) => top(id, '360 in', { width: '44 in' }));
    const own = inches.map((bolt) => ({ ...bolt, selvage: '0.5 in', squaring: '1 in' }));
    const backing = { ...flannel, width: '44 in', length: '2000 in', selvage: '0.5 in' };
    const made = answer({ unit: 'cm', plan: { ...plan, unit: 'in' }, bolts: [...own, backing] });
    expect(made).toMatchObject({ most: 42, cut: 21.59, grid: { blocks: 20 } });
    expect(made.weight.unit).toBe('kg');
    expect(made.links.self).toContain('plan.unit=in');
  });

  test('planKits warns of what concerns a seller, and as danger of a cot', () => {
    const codes = (columns: number) =>
      answer({
        plan: { target: { columns, rows: 5 }, block: { cut: 8.5 } },
        bolts: [top('a', 360)],
      }).cautions.map(({ code, severity }) => `${code} ${severity}`);
    expect(codes(4)).toContain('infant-sleep danger');
    expect(codes(9)).toContain('infant-sleep note');
    const expected = ['label-rules note', 'selling-children note', 'flammability note'];
    expect(codes(9)).toEqual(expect.arrayContaining(expected));
  });

  test('planKits: one bolt more, or a longer one, never makes fewer kits; the sums are kept', () => {
    const bolt = fc
      .tuple(fc.integer({ min: 9, max: 300 }), fc.constantFrom('a', 'b', 'c', 'd'))
      .map(([length, print]) => ({ length, print }));
    fc.assert(
      fc.property(fc.array(bolt, { minLength: 1, maxLength: 6 }), bolt, (rows, more) => {
        const make = (list: typeof rows) =>
          list.map(({ length, print }, at) => top(`bolt ${at}`, length, { print }));
        const perKit = { distinctPrints: 2, mostOfOne: 9 };
        const one = answer({ bolts: [...make(rows), flannel], perKit });
        const longer = rows.map((row, at) =>
          at === 0 ? { ...row, length: row.length + 40 } : row,
        );
        for (const list of [[...rows, more], longer]) {
          const other = answer({ bolts: [...make(list), flannel], perKit });
          expect(other.most).toBeGreaterThanOrEqual(one.most);
        }
        const inKits = one.kits.reduce(
          (sum, kit) => sum + kit.count * kit.prints.reduce((all, print) => all + print.blocks, 0),
          0,
        );
        const used = (role: string) =>
          one.cutting.reduce((sum, row) => sum + (row.role === role ? row.used : 0), 0);
        expect(inKits).toBe(20 * one.made);
        expect(used('top')).toBe(inKits);
        expect(used('backing')).toBe(20 * one.made);
        for (const [at, row] of one.cutting.entries()) {
          const rest = one.left[at];
          expect(row.cut * row.perStrip - row.used).toBe(rest?.squares);
          const given = one.input.bolts[at]?.length ?? 0;
          expect(row.length + (rest?.length ?? 0)).toBeCloseTo(given, 3);
        }
      }),
      { numRuns: 60 },
    );
  });

  test('planKits: what it says to buy is enough', () => {
    fc.assert(
      fc.property(
        fc.array(fc.integer({ min: 9, max: 200 }), { minLength: 1, maxLength: 5 }),
        fc.integer({ min: 1, max: 30 }),
        fc.integer({ min: 1, max: 6 }),
        (lengths, kits, distinctPrints) => {
          const bolts = [...lengths.map((length, at) => top(`bolt ${at}`, length)), flannel];
          const perKit = { distinctPrints, mostOfOne: 6 };
          const one = answer({ bolts, kits, perKit });
          const bought = (one.buyMore ?? []).map(
            ({ role, print, width, buy }, at): KitBolt => ({
              id: `bought ${at}`,
              role,
              print: print ?? `new ${at}`,
              width,
              length: `${buy.amount} yd`,
            }),
          );
          expect(answer({ bolts: [...bolts, ...bought], kits, perKit }).made).toBe(kits);
        },
      ),
      { numRuns: 60 },
    );
  });
});
