import { expect, test } from 'vitest';
import { leaningBlock } from '../../../client/drawing/leaning-block.ts';
import { find, renderFresh } from '../../support/render.ts';

const shift = (lean: number) => {
  const root = renderFresh(leaningBlock(lean, 'A block'));
  const d = find<Element>(root, '.cloth').getAttribute('d') ?? '';
  return Number(/^M(-?[\d.]+)/.exec(d)?.[1]) - 30;
};

test('leaningBlock moves its upper edge by the lean, whichever way', () => {
  // Its side is 60 units.
  expect([0, 0.1, -0.1].map(shift)).toEqual([0, 6, -6]);
});

test('leaningBlock stays in its drawing however much it leans', () => {
  expect(shift(4)).toBe(30);
});
