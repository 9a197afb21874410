import { describe, expect, test } from 'vitest';
import { FABRICS } from '#core/tables/fabrics.ts';
import {
  listPoints,
  rulersView,
  spanOf,
} from '../../../../client/elements/wash/wash-view-rulers.ts';
import { readText, renderFresh } from '../../../support/render.ts';
import { showWash } from '../../../support/wash-example.ts';

const cloth = (fabric: string) => ({ fabric, washes: '1', rows: [] });

describe('rulersView', () => {
  test('rulersView says mean, intervals, spread and what the ruler blurs', () => {
    const root = renderFresh(rulersView(showWash(), cloth('flannel')));
    const said = readText(root, '.result').replaceAll('\u00a0', ' ');
    expect(said).toMatch(/The mean lies between [\d.]+ % and [\d.]+ %; one new piece between/);
    expect(said).toMatch(/3 measured, spread [\d.]+ %\. The ruler alone blurs one by/);
  });

  test('rulersView has beside it the range of the table and its source', () => {
    const source = FABRICS.find(({ name }) => name === 'flannel')?.shrinkSource ?? 'none';
    const said = renderFresh(rulersView(showWash(), cloth('flannel'))).textContent ?? '';
    expect(said.replaceAll('\u00a0', ' ')).toContain('along the roll 5 %, 3 % to 10 %');
    expect(said).toContain(source);
  });

  test('rulersView keeps room free until the first answer is there, so that nothing jumps', () => {
    const context = showWash();
    const state = { ...context.state, answer: undefined, isBusy: true };
    const root = renderFresh(rulersView({ ...context, state }, cloth('flannel')));
    expect(root.querySelectorAll('.room')).toHaveLength(1);
    expect(renderFresh(rulersView(context, cloth('flannel'))).querySelector('.room')).toBeNull();
  });

  test('rulersView says of one specimen that nothing is known of the spread', () => {
    const one = showWash(
      'swatches.0.fabric=denim&swatches.0.direction=length&swatches.0.before=10&swatches.0.after=9',
    );
    const root = renderFresh(rulersView(one, cloth('denim')));
    expect(readText(root, '.note')).toContain('nothing is known of the spread');
    expect(root.querySelector('.next')).toBeNull();
  });
});

test('spanOf turns changes into shrinks, ends and all', () => {
  expect(spanOf(-5, -3)).toEqual({ low: 3, high: 5 });
  expect(spanOf(-5, undefined)).toBeUndefined();
});

test('listPoints gives the shrink of each specimen of one result', () => {
  const swatch = { fabric: 'a', direction: 'length', washes: 1, before: 10, after: 9.5 } as const;
  const others = [
    { ...swatch, washes: 2 },
    { ...swatch, direction: 'width' },
    { ...swatch, fabric: 'b' },
  ];
  expect(listPoints([swatch, ...others], swatch)).toEqual([5]);
});
