import { describe, expect, test } from 'vitest';
import { readCounter } from '../../../client/data/counter-question.ts';
import { readRows } from '../../../client/data/counter-rows.ts';
import type { AnyDraft } from '../../../client/data/draft.ts';

function rowsFor(shop: AnyDraft, question = 'target.width=40&target.height=50', currency = 'USD') {
  const read = readCounter(question);
  if (!read.ok) throw new Error(JSON.stringify(read.faults));
  return readRows(read.value.needs, shop, currency);
}

describe('readRows', () => {
  test('readRows takes the bolt of the plan where nothing was typed', () => {
    const [row] = rowsFor({});
    expect(row).toMatchObject({ bolt: { width: 42 * 25.4 }, isGot: false, faults: [] });
    expect([row?.cost, row?.left, row?.other]).toEqual([undefined, undefined, undefined]);
  });

  // By hand: 21 squares of 12 in off 108 in: 8 across 107 in, 3 strips, 36 + 1 in, which is 1 1/8 yd; 25.00 a yard.
  test('readRows asks for 1 1/8 yd off a bolt of 108 in, for 28.13', () => {
    const row = rowsFor({ '4.width': '108', '4.price': '25' })[4];
    expect(row?.ask).toMatchObject({ perStrip: 8, strips: 3, buy: { text: '1 1/8 yd' } });
    expect(row?.cost).toBe(2813);
  });

  test.each([
    ['2', 1828.8],
    ['1 3/8', 1257.3],
    ['1⅜ yd', 1257.3],
    ['50 in', 1270],
    ['50"', 1270],
    ['1.2 m', 1200],
  ])('readRows reads %j left on the bolt as yards unless it says otherwise: %d mm', (left, mm) => {
    expect(rowsFor({ '4.left': left })[4]?.left?.length).toBeCloseTo(mm, 6);
  });

  test('readRows reads what is left as metres where the plan is in centimetres', () => {
    const question = 'unit=cm&target.width=100&target.height=130';
    expect(rowsFor({ '0.left': '1,5' }, question)[0]?.left?.length).toBeCloseTo(1500, 6);
  });

  test('readRows tells what cannot be read, and reckons on with the rest', () => {
    const [row] = rowsFor({ '0.width': 'wide', '0.price': '1,250', '0.left': '-2', '0.got': '1' });
    expect(row?.faults.map(({ place }) => place)).toEqual(['width', 'price', 'left']);
    expect(row?.faults[0]?.fault).toMatchObject({ code: 'not-a-length', received: 'wide' });
    expect(row).toMatchObject({ isGot: true, bolt: { width: 42 * 25.4 } });
    expect(row?.ask.buy?.text).toBe('3/4 yd');
  });

  test('readRows knows another bolt by its width or its price', () => {
    expect(rowsFor({ '0.otherWidth': '58' })[0]?.other).toEqual({
      width: 1473.2,
      price: undefined,
    });
    expect(rowsFor({ '0.otherPrice': '9,5' })[0]?.other).toEqual({ width: 42 * 25.4, price: 950 });
  });
});
