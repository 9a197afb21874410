import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import type { PlanRequest } from '#core/contract.ts';
import { resolvePlan } from '#core/wish/resolve-plan.ts';
import { planFor } from '../../support/plans.ts';
import { planRequests } from '../../support/requests.ts';

const grid = { target: { columns: 4, rows: 5 }, block: { cut: 8 } } as const;

function classFor(request: PlanRequest) {
  const answer = planFor(request);
  if (answer.class === undefined) throw new Error('no class');
  return { answer, all: answer.class };
}

describe('supplyClass', () => {
  test('supplyClass is not in the answer unless it is asked for', () => {
    expect(planFor(grid).class).toBeUndefined();
    expect(planFor(grid).input).not.toHaveProperty('pupils');
  });

  test('supplyClass(12 × 21 backings of 8 in, 5 a strip) is 51 strips and 11 3/8 yd, worked by hand', () => {
    // 20 blocks and 1 spare each, 41 in usable: 252 squares, 51 strips, 51·8 + 1 = 409 in, 91 steps of 4 1/2 in.
    const { all, answer } = classFor({ ...grid, pupils: 12 });
    const backing = all.fabrics.find(({ role }) => role === 'backing');
    expect(backing).toMatchObject({ pieces: 252, strips: 51, length: 409 });
    expect(backing?.buy).toEqual({ amount: 11.375, unit: 'yd', text: '11 3/8 yd' });
    // Alone each buys 5 strips, 41 in, 10 steps: 1 1/4 yd, which is 15 yd for twelve.
    expect(answer.fabrics.at(-1)?.buy.amount).toBe(1.25);
  });

  test('supplyClass of one pupil is the plan, but for spare pieces told apart', () => {
    fc.assert(
      fc.property(planRequests, (request) => {
        fc.pre(resolvePlan(request).ok);
        const { all, answer } = classFor({ ...request, pupils: 1 });
        for (const [index, own] of all.fabrics.entries()) {
          const row = answer.fabrics[index];
          expect(own.pieces).toBe((row?.pieces ?? 0) + (row?.spare ?? 0));
          expect([own.strips, own.length, own.buy]).toEqual([row?.strips, row?.length, row?.buy]);
          expect([own.purchase, own.cost]).toEqual([row?.purchase, row?.cost]);
        }
        expect(all.thread.used).toBe(answer.thread.used);
      }),
      { numRuns: 40 },
    );
  });

  test('supplyClass never buys more than each by herself, nor less than her pieces take', () => {
    const pupils = fc.integer({ min: 1, max: 60 });
    fc.assert(
      fc.property(planRequests, pupils, (request, count) => {
        fc.pre(resolvePlan(request).ok);
        const { all, answer } = classFor({ ...request, pupils: count });
        for (const [index, own] of all.fabrics.entries()) {
          const row = answer.fabrics[index];
          if (row === undefined) throw new Error('no row');
          expect(own.buy.amount).toBeLessThanOrEqual(count * row.buy.amount + 1e-4);
          expect(own.strips * row.perStrip).toBeGreaterThanOrEqual(own.pieces);
          expect(own.pieces).toBe(count * (row.pieces + row.spare));
        }
        expect(all.thread.bobbins).toBe(count * answer.thread.bobbins);
      }),
      { numRuns: 40 },
    );
  });

  test('supplyClass buys of what is on offer, once for all', () => {
    const squares = {
      kind: 'pieces',
      id: 'Fat quarter',
      width: 21,
      length: 18,
      count: 1,
      price: 350,
    } as const;
    const layers = [{ role: 'top', prints: 1, offers: [squares] }, { role: 'backing' }] as const;
    const { all, answer } = classFor({ ...grid, layers, pupils: 3 });
    // 4 squares of 8 in a fat quarter; 21 take 6, three times 21 take 16.
    expect(answer.fabrics[0]?.purchase?.[0]).toMatchObject({ count: 6 });
    expect(all.fabrics[0]?.purchase?.[0]).toMatchObject({ count: 16 });
    expect(all.fabrics[0]?.cost).toMatchObject({ total: 16 * 350 });
  });

  test('supplyClass gives each a fresh blade, and a needle for each eight hours of sewing', () => {
    const { all } = classFor({ ...grid, pupils: 10 });
    expect([all.needles, all.blades]).toEqual([
      { each: 1, all: 10 },
      { each: 1, all: 10 },
    ]);
    // A metre a quarter of an hour: 168 blocks take much more than eight hours.
    const slow = classFor({ target: { size: 'queen' }, pace: { sewMetre: 15 }, pupils: 2 });
    const { quilt, joins, rows, border } = slow.answer.time;
    expect(slow.all.needles.each).toBe(Math.ceil((quilt + joins + rows + border) / 480));
    expect(slow.all.needles.each).toBeGreaterThan(1);
  });
});
