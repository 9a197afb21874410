import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import type { RollAnswer, RollFabric, YardageRequest } from '#core/contract.ts';
import { resolveYardage } from '#core/wish/resolve-yardage.ts';
import { planYardage } from '#core/yardage.ts';
import { deepFreeze } from '../support/deep-freeze.ts';

function plan(request: YardageRequest) {
  const resolved = resolveYardage(deepFreeze(request));
  if (!resolved.ok) throw new Error(JSON.stringify(resolved.faults));
  return planYardage(deepFreeze(resolved.value));
}

function planOne(fabric: Omit<RollFabric, 'id'>, unit: 'in' | 'cm' = 'in'): RollAnswer {
  const [answer] = plan({ unit, fabrics: [{ id: 'roll', ...fabric }] }).fabrics;
  if (answer === undefined) throw new Error('No answer');
  return answer;
}

const SQUARES = { id: 'square', width: 8.5, length: 8.5, count: 48 };

describe('planYardage', () => {
  test('planYardage(48 squares of 8 1/2 in from 42 in) buys 103 in as 2 7/8 yd', () => {
    expect(planOne({ width: 42, pieces: [SQUARES] })).toEqual({
      id: 'roll',
      usableWidth: 41,
      length: 103,
      buy: [{ offer: 'roll', amount: 2.875, unit: 'yd', text: '2 7/8 yd' }],
      strips: [
        { count: 12, length: 8.5, pieces: [{ id: 'square', count: 4, turned: false }], left: 7 },
      ],
      // 48 squares of 72.25 out of 103.5 by 42 square inches.
      waste: expect.closeTo(100 * (1 - 3468 / 4347), 4),
      bound: 103,
      optimal: true,
    });
  });

  test('planYardage with a prewash of 6 % buys the cloth that the wash takes', () => {
    const prewash = { length: 6, width: 0 };
    const { length } = planOne({ width: 42, pieces: [SQUARES], prewash });
    expect(length).toBeCloseTo(103 / 0.94, 4);
  });

  test('planYardage(cloth left on the bolt) says whether it is enough, and else what it gives', () => {
    const enough = planOne({ width: 42, pieces: [SQUARES], lengthLeft: 103 });
    expect(enough).toMatchObject({ enough: true });
    expect(enough).not.toHaveProperty('fits');
    const short = planOne({ width: 42, pieces: [SQUARES], lengthLeft: '102 15/16' });
    expect(short).toMatchObject({ enough: false, fits: [{ id: 'square', count: 44 }] });
    expect(planOne({ width: 42, pieces: [SQUARES] })).not.toHaveProperty('enough');
  });

  test('planYardage turns a piece only where it may', () => {
    const piece = { id: 'strip', width: 30, length: 50, count: 2 };
    const roll = { width: 100, selvage: 0, squaring: 0 };
    const free = planOne({ ...roll, pieces: [piece] }, 'cm');
    expect(free.strips[0]?.pieces[0]?.turned).toBe(true);
    expect(free.length).toBe(30);
    const bound = planOne({ ...roll, pieces: [{ ...piece, directional: true }] }, 'cm');
    expect(bound.length).toBe(50);
  });

  test('planYardage carries engine, input, assumptions, the cutter and its address', () => {
    const answer = plan({ fabrics: [{ id: 'roll', width: 42, pieces: [SQUARES] }] });
    expect(answer.cautions.map((caution) => caution.code)).toEqual(['rotary-cutter']);
    expect(answer.input.fabrics[0]?.selvage).toBe(0.5);
    expect(answer.assumptions.map((one) => one.path)).toContain('fabrics.0.selvage');
    expect(answer.links.self).toMatch(/^\/v1\/yardage\?fabrics\.0\.id=roll&/);
  });

  test('planYardage buys at least what it cuts, from 1 to 400 pieces, and never less for more', () => {
    let before = 0;
    for (let count = 1; count <= 400; count += 1) {
      const roll = planOne({ width: 42, pieces: [{ ...SQUARES, count }] });
      const cut = roll.strips.reduce(
        (sum, strip) => sum + strip.count * (strip.pieces[0]?.count ?? 0),
        0,
      );
      expect(cut).toBeGreaterThanOrEqual(count);
      const [bought] = roll.buy;
      const yards = bought !== undefined && 'amount' in bought ? bought.amount : 0;
      expect(yards * 36).toBeGreaterThanOrEqual(roll.length - 1e-3);
      expect(roll.length).toBeGreaterThanOrEqual(before);
      before = roll.length;
    }
  });

  test('planYardage of one roll in inches and in centimetres is one length', () => {
    const eighth = fc.integer({ min: 16, max: 160 }).map((eighths) => eighths / 8);
    fc.assert(
      fc.property(eighth, eighth, fc.integer({ min: 1, max: 80 }), (width, length, count) => {
        const text = (inches: number) => `${inches} in`;
        const roll = { width: '42 in', selvage: '0.5 in', squaring: '1 in', step: '4.5 in' };
        const piece = { id: 'p', width: text(width), length: text(length), count };
        const inches = planOne({ ...roll, pieces: [piece] }, 'in');
        const centimetres = planOne({ ...roll, pieces: [piece] }, 'cm');
        expect(centimetres.length).toBeCloseTo(inches.length * 2.54, 3);
        expect(centimetres.strips.map((strip) => [strip.count, strip.pieces])).toEqual(
          inches.strips.map((strip) => [strip.count, strip.pieces]),
        );
      }),
    );
  });
});
