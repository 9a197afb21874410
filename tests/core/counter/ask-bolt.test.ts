import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { askBolt } from '#core/counter/ask-bolt.ts';
import { counterFor, drawnNeed } from '../../support/counter-needs.ts';
import { planFor } from '../../support/plans.ts';

const inch = (value: number) => value * 25.4;

describe('askBolt', () => {
  // A square yard makes sixteen 9-in squares in four strips off 36 in: the arithmetic of any cutting chart.
  test('askBolt(16 squares of 9 in, 36 in wide without selvage) is one yard', () => {
    const roll = { width: inch(36), selvage: 0, prewash: { length: 0, width: 0 } };
    const need = { cut: inch(9), squares: 16, spare: 0, roll, squaring: 0, step: inch(4.5) };
    const ask = askBolt({ ...need, unit: 'in' }, inch(36));
    expect(ask).toMatchObject({ perStrip: 4, strips: 4, over: 0 });
    expect(ask.buy).toEqual({ amount: 1, unit: 'yd', text: '1 yd' });
  });

  test.each([
    { target: { width: 40, height: 50 } },
    {
      target: { size: 'queen' as const },
      layers: [
        { role: 'top' as const, prints: 3 },
        { role: 'backing' as const, prewashed: true },
      ],
    },
    { unit: 'cm' as const, target: { columns: 6, rows: 8 }, block: { cut: 22 }, spare: 12 },
  ])('askBolt of the bolts of %j buys what the plan buys', (request) => {
    const asked = counterFor(request).needs.map((need) => askBolt(need, need.roll.width));
    const planned = planFor(request).fabrics;
    expect(asked.map(({ buy }) => buy)).toEqual(planned.map(({ buy }) => buy));
    expect(asked.map(({ strips, perStrip }) => [strips, perStrip])).toEqual(
      planned.map(({ strips, perStrip }) => [strips, perStrip]),
    );
  });

  test('a wider bolt never needs more, and gives every square', () => {
    fc.assert(
      fc.property(drawnNeed, fc.integer({ min: 0, max: 900 }), (need, more) => {
        const [narrow, wide] = [need.roll.width, need.roll.width + more].map((width) =>
          askBolt(need, width),
        );
        if (narrow?.buy === undefined) return;
        expect(wide?.buy?.amount).toBeLessThanOrEqual(narrow.buy.amount);
        expect(narrow.over).toBeGreaterThanOrEqual(0);
        expect(narrow.over).toBeLessThan(narrow.perStrip);
      }),
    );
  });

  test('askBolt gives nothing to buy where a square is wider than the bolt', () => {
    const [need] = counterFor({ target: { width: 40, height: 50 } }).needs;
    if (need === undefined) throw new Error('A plan without cloth');
    expect(askBolt(need, inch(12)).buy).toBeUndefined();
    expect(askBolt(need, inch(13)).perStrip).toBe(1);
  });
});
