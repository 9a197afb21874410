import { describe, expect, test } from 'vitest';
import { boltView, leftView } from '../../../../client/elements/counter/counter-view-bolt.ts';
import { setCounter } from '../../../support/counter-scene.ts';
import { find, readText, renderFresh, type } from '../../../support/render.ts';

function show(view: typeof boltView, scene: Parameters<typeof setCounter>[0]) {
  const { context, done } = setCounter(scene);
  const row = context.rows[context.at];
  if (row === undefined) throw new Error('There is no cloth');
  return { root: renderFresh(view(context, row)), done };
}

describe('boltView', () => {
  test('boltView marks the width that lies there, and chooses another', () => {
    const { root, done } = show(boltView, { shop: { '0.width': '58' } });
    const chosen = [...root.querySelectorAll<HTMLInputElement>('.widths input')].map(
      ({ checked }) => checked,
    );
    expect(chosen).toEqual([false, false, false, true, false, false]);
    find(root, '.widths label:last-child input').click();
    find(root, '.widths label:first-child input').click();
    expect(done).toEqual([
      ['type', 'width', '108'],
      ['type', 'width', ''],
    ]);
  });

  test('boltView offers the width of the plan too, where it is not a usual one', () => {
    const { root } = show(boltView, { question: 'unit=cm&target.width=100&target.height=130' });
    const said = [...root.querySelectorAll('.widths b')].map(({ textContent }) => textContent);
    expect(said).toEqual([
      '108\u00a0cm',
      '110\u00a0cm',
      '140\u00a0cm',
      '150\u00a0cm',
      '280\u00a0cm',
    ]);
  });

  test('boltView takes any width and a price of a yard or metre', () => {
    const { root, done } = show(boltView, {});
    type(root, '#width', '43 1/2');
    type(root, '#price', '12,99');
    expect(done).toEqual([
      ['type', 'width', '43 1/2'],
      ['type', 'price', '12,99'],
    ]);
    expect(readText(root, 'label[for=price]')).toBe('Price a yard');
    const metric = show(boltView, { question: 'unit=cm&target.size=double' });
    expect(readText(metric.root, 'label[for=price]')).toBe('Price a metre');
  });
});

describe('leftView', () => {
  test('leftView says what the field is for until something is typed', () => {
    const { root, done } = show(leftView, {});
    expect(readText(root, 'p.soft')).toMatch(/^Type what the label/);
    type(root, '#left', '1 3/8');
    expect(done).toEqual([['type', 'left', '1 3/8']]);
  });

  test('leftView names the nearest quilt and opens it, or says that there is none', () => {
    const nearest = {
      columns: 4,
      rows: 6,
      cut: 10,
      washed: { width: 32.75, height: 48.25 },
      question: 'target.columns=4&target.rows=6&block.cut=10',
    };
    const short = { shop: { '0.left': '0.4', '0.width': '44', '1.got': '1' } };
    const { root, done } = show(leftView, { ...short, state: { nearest } });
    expect(readText(root, '.nearest')).toBe(
      'The nearest quilt that it makes: 4 by 6 blocks, cut 10 in 32¾ × 48¼ in once washed Make this one',
    );
    find(root, '.nearest button').click();
    expect(done).toEqual([['open', `?${nearest.question}#0.width=44&1.got=1`]]);
    const none = show(leftView, { ...short, state: { nearest: 'none' } });
    expect(readText(none.root, '.nearest')).toBe('It makes no quilt with the cloth that you have.');
    const unfetched = show(leftView, { ...short, state: { nearest: 'unfetched' } });
    expect(readText(unfetched.root, '.nearest')).toMatch(/could not be fetched/);
  });

  test('leftView speaks of no quilt where only squares were asked for', () => {
    const { root } = show(leftView, { question: 'cut=8.5&count=40', shop: { '0.left': '1' } });
    expect(root.querySelector('.nearest')).toBeNull();
  });
});
