import { describe, expect, test } from 'vitest';
import { compareView } from '../../../../client/elements/counter/counter-view-compare.ts';
import { setCounter } from '../../../support/counter-scene.ts';
import { readText, renderFresh, type } from '../../../support/render.ts';

function show(shop: Readonly<Record<string, string>>) {
  const { context, done } = setCounter({ shop: { at: '4', ...shop } });
  const row = context.rows[4];
  if (row === undefined) throw new Error('There is no cloth');
  return { root: renderFresh(compareView(context, row)), done };
}

describe('compareView', () => {
  // By hand: 2 3/8 yd at 12.99 is 30.85; 1 1/8 yd at 25.00 is 28.13; a top print 3/4 yd at 10.00 is 7.50.
  const prices = { '4.price': '12.99', '4.otherWidth': '108', '4.otherPrice': '25' };

  test('compareView sets two bolts side by side and says which is cheaper for the whole quilt', () => {
    const { root } = show({ ...prices, '0.price': '10' });
    expect(readText(root, 'tbody tr:first-child')).toBe('This bolt 42 in 2⅜ yd $30.85 $38.35');
    expect(readText(root, 'tbody tr:last-child')).toBe('The other bolt 108 in 1⅛ yd $28.13 $35.63');
    expect(readText(root, 'p')).toBe(
      'The other bolt is cheaper by $2.72. 3 cloths have no price yet.',
    );
  });

  test('compareView says that this one is cheaper, or that they cost the same', () => {
    expect(readText(show({ ...prices, '4.otherPrice': '40' }).root, 'p')).toMatch(
      /^This bolt is cheaper by \$14\.15\./,
    );
    const same = { '4.price': '10', '4.otherPrice': '10' };
    expect(readText(show(same).root, 'p')).toMatch(/^They cost the same\./);
  });

  test('compareView asks for both prices, and has no cost for what is too narrow', () => {
    expect(readText(show({}).root, 'p')).toBe('Type both prices to compare.');
    const { root } = show({ ...prices, '4.otherWidth': '10' });
    expect(readText(root, 'tbody tr:last-child')).toBe('The other bolt 10 in Too narrow – –');
    expect(readText(root, 'p')).toBe('Type both prices to compare.');
  });

  test('compareView takes what is typed of the other bolt', () => {
    const { root, done } = show({});
    type(root, '#otherWidth', '58');
    type(root, '#otherPrice', '9.50');
    expect(done).toEqual([
      ['type', 'otherWidth', '58'],
      ['type', 'otherPrice', '9.50'],
    ]);
  });
});
