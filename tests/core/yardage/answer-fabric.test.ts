import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import type { RollAnswer, StripGroup, Unit } from '#core/contract.ts';
import { answerFabric } from '#core/yardage/answer-fabric.ts';
import type { FabricInput } from '#core/yardage/read-fabric.ts';
import { deepFreeze } from '../../support/deep-freeze.ts';

const piece = (id: string, [width, length]: readonly [number, number], count: number) => ({
  id,
  width,
  length,
  count,
  directional: false,
});
const FABRIC: FabricInput = deepFreeze({
  id: 'cloth',
  width: 42,
  selvage: 0.5,
  prewash: { length: 0, width: 0 },
  squaring: 1,
  step: 4.5,
  pieces: [piece('a', [8.5, 8.5], 10), piece('b', [6, 12], 9), piece('c', [20, 4], 3)],
});
const ask = (fabric: FabricInput, unit: Unit) => answerFabric(fabric, unit, { steps: 1e6 });
const ROLL = { kind: 'roll', id: 'bolt', step: 4.5, least: 4.5, price: 1200 } as const;
const QUARTER = {
  kind: 'pieces',
  id: 'quarter',
  width: 21,
  length: 18,
  count: 1,
  price: 300,
} as const;

function countPieces(answer: RollAnswer): ReadonlyMap<string, number> {
  const counts = new Map<string, number>();
  const add = (groups: readonly StripGroup[], times: number) => {
    for (const group of groups) {
      for (const { id, count } of group.pieces) {
        counts.set(id, (counts.get(id) ?? 0) + times * group.count * count);
      }
    }
  };
  add(answer.strips, 1);
  for (const sheet of answer.sheets ?? []) add(sheet.strips, sheet.count);
  return counts;
}

describe('answerFabric', () => {
  test('answerFabric(three sizes) cuts exactly the pieces, as long as its strips and the squaring-up', () => {
    const answer = ask(FABRIC, 'in');
    expect([...countPieces(answer)].toSorted()).toEqual([
      ['a', 10],
      ['b', 9],
      ['c', 3],
    ]);
    const strips = answer.strips.reduce((sum, strip) => sum + strip.count * strip.length, 0);
    expect(answer.length).toBeCloseTo(strips + 1, 4);
    expect(answer).toMatchObject({ optimal: true, bound: answer.length });
    expect(answer).not.toHaveProperty('cost');
    expect(answer).not.toHaveProperty('sheets');
    const used = 10 * 72.25 + 9 * 72 + 3 * 80;
    const bought = answer.buy.reduce((sum, line) => sum + ('amount' in line ? line.amount : 0), 0);
    expect(answer.waste).toBeCloseTo(100 * (1 - used / (bought * 36 * 42)), 3);
  });

  test('answerFabric with offers buys the cheapest, and tells what it comes to', () => {
    const roll = ask({ ...FABRIC, offers: [ROLL] }, 'in');
    expect(roll.cost).toEqual({
      of: 'price',
      total: roll.buy[0]?.price,
      bound: roll.buy[0]?.price,
    });
    expect(roll.bound).toBe(roll.length);
    const mixed = ask({ ...FABRIC, offers: [ROLL, QUARTER] }, 'in');
    expect(mixed.optimal).toBe(true);
    expect(mixed.cost?.total).toBeLessThanOrEqual(roll.cost?.total ?? 0);
    expect([...countPieces(mixed)].toSorted()).toEqual([...countPieces(roll)].toSorted());
    expect(mixed.bound).toBe(0);
  });

  test('answerFabric without prices counts cloth: 3 fat quarters for 12 squares of 9 in', () => {
    const { price: _, ...quarter } = QUARTER;
    const pieces = [piece('square', [9, 9], 12)];
    const answer = ask({ ...FABRIC, pieces, offers: [quarter] }, 'in');
    expect(answer).toMatchObject({
      length: 0,
      strips: [],
      buy: [{ offer: 'quarter', count: 3, unit: 'pack' }],
      cost: { of: 'area', total: expect.closeTo((3 * 378) / 1296, 4) },
      sheets: [{ offer: 'quarter', count: 3, strips: [{ count: 2, length: 9, left: 3 }] }],
      waste: expect.closeTo(100 * (1 - 972 / 1134), 4),
      optimal: true,
    });
  });

  test('answerFabric counts waste of the cloth as it is after a prewash', () => {
    // A metre of a metre shrinks to 90 by 95 cm: one piece of that size wastes nothing.
    const pieces = [{ ...piece('all', [95, 90], 1), directional: true }];
    const prewash = { length: 10, width: 5 };
    const fabric = { ...FABRIC, width: 100, selvage: 0, squaring: 0, step: 10, prewash, pieces };
    expect(ask(fabric, 'cm')).toMatchObject({ length: 100, waste: 0, optimal: true });
  });

  test('answerFabric tells what offers give that are not enough', () => {
    const pieces = [piece('square', [9, 9], 12)];
    const offers = [{ ...QUARTER, most: 2 }];
    const answer = ask({ ...FABRIC, pieces, offers }, 'in');
    expect(answer).toMatchObject({
      enough: false,
      fits: [{ id: 'square', count: 8 }],
      optimal: false,
    });
  });

  test('answer(cloth left) is enough from the very length on, and else tells what can be cut', () => {
    const { length } = ask(FABRIC, 'in');
    expect(ask({ ...FABRIC, lengthLeft: length }, 'in')).toMatchObject({ enough: true });
    const short = ask({ ...FABRIC, lengthLeft: length - 1 / 8 }, 'in');
    expect(short.enough).toBe(false);
    const counts = short.fits?.map(({ count }) => count) ?? [];
    expect(counts.some((count) => count > 0)).toBe(true);
    const pieces = FABRIC.pieces
      .map((one, at) => ({ ...one, count: counts[at] ?? 0 }))
      .filter(({ count }) => count > 0);
    expect(ask({ ...FABRIC, pieces }, 'in').length).toBeLessThanOrEqual(length - 1 / 8);
  });

  test('answerFabric conserves pieces and buys what it cuts, with any offers', () => {
    const eighth = (least: number, most: number) =>
      fc.integer({ min: least * 8, max: most * 8 }).map((eighths) => eighths / 8);
    const pieces = fc.array(
      fc.record({
        width: eighth(3, 15),
        length: eighth(3, 15),
        count: fc.integer({ min: 1, max: 20 }),
      }),
      { minLength: 1, maxLength: 4 },
    );
    const prices = fc.record({
      roll: fc.integer({ min: 200, max: 3000 }),
      quarter: fc.integer({ min: 50, max: 900 }),
    });
    fc.assert(
      fc.property(pieces, prices, (drawn, { roll, quarter }) => {
        const wanted = drawn.map((one, at) => ({ ...one, id: `${at}`, directional: at % 2 === 0 }));
        const offers = [
          { ...ROLL, price: roll },
          { ...QUARTER, price: quarter },
        ];
        const answer = ask({ ...FABRIC, pieces: wanted, offers }, 'in');
        const counts = countPieces(answer);
        for (const { id, count } of wanted) expect(counts.get(id)).toBe(count);
        const bought = new Map(answer.buy.map((line) => [line.offer, line]));
        const length = bought.get('bolt');
        const packs = bought.get('quarter');
        const yards = length !== undefined && 'amount' in length ? length.amount : 0;
        expect(yards * 36).toBeGreaterThanOrEqual(answer.length - 1e-3);
        const sheets = answer.sheets?.reduce((sum, { count }) => sum + count, 0) ?? 0;
        expect(packs !== undefined && 'count' in packs ? packs.count : 0).toBeGreaterThanOrEqual(
          sheets,
        );
        expect(answer.cost?.bound).toBeLessThanOrEqual(answer.cost?.total ?? 0);
        const alone = ask({ ...FABRIC, pieces: wanted, offers: offers.slice(0, 1) }, 'in');
        expect(answer.cost?.total).toBeLessThanOrEqual((alone.cost?.total ?? 0) + 1);
      }),
      { numRuns: 40 },
    );
  });
});
