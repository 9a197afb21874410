import { describe, expect, test } from 'vitest';
import { writeProgramme } from '#core/cloth/offers/cover-programme.ts';
import { layOut } from '#core/cloth/offers/lay-out.ts';
import { listFillings } from '#core/cloth/offers/list-fillings.ts';
import { coverByHand, ORDER_BY_HAND } from '../../../support/covers.ts';

describe('layOut', () => {
  test('layOut puts pieces on sheets first, and the rest on the shortest roll, not on what was chosen', () => {
    const cover = coverByHand(true);
    const fillings = ORDER_BY_HAND.sheets.map((sheet) => listFillings(ORDER_BY_HAND.kinds, sheet));
    const filling = fillings[0]?.fillings.find(({ counts }) => counts.join() === '0,2,0');
    if (filling === undefined) throw new Error('No such sheet.');
    const programme = writeProgramme(cover, {
      fillings: [{ sheet: 0, filling }],
      patterns: [
        { level: 1, counts: [3, 0, 0] },
        { level: 3, counts: [0, 0, 5] },
      ],
    });
    // Three steps, one pack, one sheet; a strip of 20 and, needlessly tall, one of the level of 40.
    const found = { programme, times: Float64Array.of(3, 1, 1, 1, 1), cost: 42 };
    const plan = layOut(ORDER_BY_HAND, fillings, { cover, found, at: 0 }, { steps: 1e6 });
    expect(plan).toMatchObject({ packs: [1], placed: [3, 2, 5], roll: { at: 0, steps: 3 } });
    expect(plan.sheets).toHaveLength(1);
    expect(plan.sheets[0]).toMatchObject({ at: 0, times: 1 });
    expect(plan.roll?.strips.map(({ times, height }) => [times, height])).toEqual([
      [1, 20],
      [1, 10],
    ]);
  });

  test('layOut cuts sheets alike together, leaves pieces too many out, and tells what is placed', () => {
    const cover = { ...coverByHand(false), leftOut: [1, 1, 1] };
    const fillings = ORDER_BY_HAND.sheets.map((sheet) => listFillings(ORDER_BY_HAND.kinds, sheet));
    const filling = fillings[0]?.fillings.find(({ counts }) => counts.join() === '1,1,2');
    if (filling === undefined) throw new Error('No such sheet.');
    const programme = writeProgramme(cover, { fillings: [{ sheet: 0, filling }], patterns: [] });
    const found = { programme, times: Float64Array.of(3, 3, 0, 0, 0), cost: 36 };
    const plan = layOut(ORDER_BY_HAND, fillings, { cover, found, at: -1 }, { steps: 1e6 });
    expect(plan).not.toHaveProperty('roll');
    expect(plan.sheets.map(({ times }) => times)).toEqual([2, 1]);
    expect(plan.placed).toEqual([3, 2, 5]);
  });
});
