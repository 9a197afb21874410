import { describe, expect, test } from 'vitest';
import { reportCounter, sayRow } from '../../../../client/elements/counter/counter-report.ts';
import { setCounter } from '../../../support/counter-scene.ts';

describe('reportCounter', () => {
  test('reportCounter tells of each cloth what to ask for and whether it is bought', () => {
    const { rows } = setCounter({ shop: { '4.got': '1', '0.width': '5' } }).context;
    const { question, cloths } = reportCounter('target.size=lap', rows);
    expect(question).toBe('target.size=lap');
    expect(cloths[0]).toEqual({ amount: undefined, unit: 'yd', isGot: false });
    expect(cloths[4]).toEqual({ amount: 2.375, unit: 'yd', isGot: true });
  });
});

describe('sayRow', () => {
  const say = (shop: Readonly<Record<string, string>>) => {
    const { context } = setCounter({ shop });
    const [row] = context.rows;
    if (row === undefined) throw new Error('There is no cloth');
    return sayRow(context.text, row);
  };

  test('sayRow is one sentence to hear, and one more where something is left', () => {
    expect(say({})).toBe('Print A: ask for three quarters of a yard.');
    expect(say({ '0.left': '2' })).toBe('Print A: ask for three quarters of a yard. Enough.');
    expect(say({ '0.left': '0.2' })).toMatch(/ Not enough\.$/);
    expect(say({ '0.width': '5' })).toBe('Print A: Too narrow.');
  });
});
