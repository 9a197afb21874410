import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { buyCloth, type ClothOrder, sumCloth } from '#core/cloth/buy-cloth.ts';
import { cutStrips } from '#core/cloth/cut-strips.ts';
import { deepFreeze } from '../../support/deep-freeze.ts';

const roll = { width: 1066.8, selvage: 12.7, prewash: { length: 0, width: 0 } };

function orderOf(blocks: number, weights: readonly number[], change: Partial<ClothOrder> = {}) {
  return deepFreeze({
    blocks,
    cut: 215.9,
    cloths: [
      ...weights.map((weight, index) => ({
        layer: 0,
        role: 'top' as const,
        fabric: 'quilting-cotton' as const,
        print: `print ${index}`,
        weight,
        roll,
      })),
      { layer: 1, role: 'backing' as const, fabric: 'flannel' as const, weight: 1, roll },
    ],
    spare: 0.05,
    squaring: 25.4,
    step: 114.3,
    usable: 63.5,
    unit: 'in' as const,
    ...change,
  });
}

const order = fc
  .tuple(
    fc.integer({ min: 1, max: 300 }),
    fc.array(fc.integer({ min: 1, max: 9 }), { minLength: 1, maxLength: 8 }),
    fc.integer({ min: 0, max: 40 }),
  )
  .map(([blocks, weights, percent]) => orderOf(blocks, weights, { spare: percent / 100 }));

describe('buyCloth', () => {
  test('buyCloth(48 blocks, 4 prints) is 12 and 1 spare a print, 48 and 3 spare of the backing', () => {
    const needs = buyCloth(orderOf(48, [1, 1, 1, 1]));
    expect(needs.map(({ pieces, spare }) => [pieces, spare])).toEqual([
      [12, 1],
      [12, 1],
      [12, 1],
      [12, 1],
      [48, 3],
    ]);
    expect(needs.map(({ print }) => print)).toEqual([
      'print 0',
      'print 1',
      'print 2',
      'print 3',
      undefined,
    ]);
    expect(needs.map(({ buy }) => buy.text)).toEqual(['1 yd', '1 yd', '1 yd', '1 yd', '3 1/8 yd']);
  });

  test('buyCloth(100 blocks, 7 %) adds 7 spare, although the product lies a hair above', () => {
    expect(Math.ceil(100 * 0.07)).toBe(8);
    expect(buyCloth(orderOf(100, [1], { spare: 0.07 }))[0]?.spare).toBe(7);
  });

  test('buyCloth shares the blocks of each layer among its own prints, none lost', () => {
    fc.assert(
      fc.property(order, (one) => {
        const needs = buyCloth(one);
        expect(needs).toHaveLength(one.cloths.length);
        for (const role of ['top', 'backing']) {
          const own = needs.filter((need) => need.role === role);
          expect(own.reduce((sum, need) => sum + need.pieces, 0)).toBe(one.blocks);
        }
      }),
    );
  });

  test('buyCloth tells two layers of one role apart', () => {
    const twice = orderOf(10, [1]);
    const top = twice.cloths[0];
    if (top === undefined) throw new Error('No top');
    const middles = [1, 2].map((layer) => ({ ...top, layer, role: 'middle' as const, weight: 3 }));
    const needs = buyCloth({ ...twice, cloths: [top, ...middles] });
    expect(needs.map((need) => need.pieces)).toEqual([10, 10, 10]);
  });

  test('buyCloth buys at least the length of its strips, and its spare covers the percentage', () => {
    fc.assert(
      fc.property(order, (one) => {
        for (const need of buyCloth(one)) {
          const pieces = need.pieces + need.spare;
          const plan = cutStrips({ roll, across: 215.9, along: 215.9, pieces, squaring: 25.4 });
          expect(need).toMatchObject(plan);
          expect(need.buy.amount * 914.4).toBeGreaterThanOrEqual(need.length - 1e-4);
          expect(need.spare).toBeGreaterThanOrEqual(need.pieces * one.spare - 1e-6);
          expect(need.spare).toBeLessThan(need.pieces * one.spare + 1);
        }
      }),
    );
  });

  test('buyCloth wastes what is bought and in no piece: area kept and wasted make the area bought', () => {
    fc.assert(
      fc.property(order, (one) => {
        for (const need of buyCloth(one)) {
          const bought = need.buy.amount * 914.4 * roll.width;
          const kept = (need.pieces + need.spare) * 215.9 ** 2;
          expect(need.waste * bought + kept).toBeCloseTo(bought, 3);
          expect(need.waste).toBeLessThan(1);
          expect(need.waste > 0).toBe(need.pieces > 0);
        }
      }),
    );
  });

  test('buyCloth of a print without blocks buys nothing and wastes nothing', () => {
    const [none] = buyCloth(orderOf(10, [0, 1]));
    expect(none).toMatchObject({ pieces: 0, spare: 0, strips: 0, length: 0, waste: 0 });
    expect(none).toMatchObject({ spareFree: 0, left: [] });
    expect(none?.buy).toEqual({ amount: 0, unit: 'yd', text: '0 yd' });
  });

  test('buyCloth tells what the purchase gives beyond: so many pieces fit it, one more would not', () => {
    const lengthOf = (cloth: ClothOrder['cloths'][number] | undefined, pieces: number) => {
      const { squaring } = orderOf(1, [1]);
      const own = cloth?.roll ?? roll;
      return cutStrips({ roll: own, across: 215.9, along: 215.9, pieces, squaring }).length;
    };
    const washed = { ...roll, prewash: { length: 0.05, width: 0.03 } };
    fc.assert(
      fc.property(order, fc.boolean(), (plain, isWashed) => {
        const cloths = plain.cloths.map((cloth) => (isWashed ? { ...cloth, roll: washed } : cloth));
        const needs = buyCloth({ ...plain, cloths });
        for (const [at, need] of needs.entries()) {
          if (need.strips === 0) continue;
          const bought = need.buy.amount * 914.4 + 1e-4;
          const most = need.pieces + need.spare + need.spareFree;
          expect(lengthOf(cloths[at], most)).toBeLessThanOrEqual(bought);
          expect(lengthOf(cloths[at], most + 1)).toBeGreaterThan(bought);
        }
      }),
    );
  });

  test('buyCloth leaves, with the pieces cut, all of the length bought but squaring-up and narrow rests', () => {
    fc.assert(
      fc.property(order, (one) => {
        for (const need of buyCloth({ ...one, usable: 0.01 })) {
          const cut = (need.pieces + need.spare) * 215.9 ** 2;
          const left = need.left.reduce((sum, { width, length }) => sum + width * length, 0);
          const length = need.strips === 0 ? 0 : need.buy.amount * 914.4 - 25.4;
          expect(cut + left).toBeCloseTo(length * need.usableWidth, -2);
        }
      }),
    );
  });
});

describe('sumCloth', () => {
  test('sumCloth adds up the rows of buyCloth: pieces with their spare, and what is bought', () => {
    fc.assert(
      fc.property(order, (one) => {
        const needs = buyCloth(one);
        const sums = sumCloth(one);
        expect(sums.pieces).toBe(needs.reduce((sum, need) => sum + need.pieces + need.spare, 0));
        expect(sums.bought).toBeCloseTo(
          needs.reduce((sum, need) => sum + need.buy.amount, 0),
          9,
        );
      }),
    );
  });
});
