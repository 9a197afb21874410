import { expect, test } from 'vitest';
import { floorView } from '../../../../client/elements/layout/layout-view-floor.ts';
import { layoutContext, SMALL } from '../../../support/layout-context.ts';
import { readText, renderFresh } from '../../../support/render.ts';

test('floorView puts a small quilt on one page, its prints and their blocks below, the top left named', () => {
  const context = layoutContext(SMALL);
  const root = renderFresh(floorView(context, context.grid));
  expect(root.querySelectorAll('section')).toHaveLength(1);
  expect(readText(root, 'h2')).toBe('Floor sheet');
  for (const swatch of root.querySelectorAll('.key svg')) swatch.remove();
  expect(readText(root, '.key').replaceAll(' ', '')).toBe('AMoss×2BRust×2C×2◤Topleft');
});

test('floorView puts a large quilt on lettered pages, and shows on each how they lie', () => {
  const context = layoutContext({ ...SMALL, columns: '30', rows: '24' });
  const root = renderFresh(floorView(context, context.grid));
  const heads = [...root.querySelectorAll('h2')].map(({ textContent }) => textContent);
  expect(heads).toEqual(['A', 'B', 'C', 'D'].map((page) => `Floor sheet, page ${page} of 4`));
  const here = [...root.querySelectorAll('.map .here')].map(({ textContent }) => textContent);
  expect(here).toEqual(['A', 'B', 'C', 'D']);
  expect(root.querySelectorAll('.map tr')).toHaveLength(8);
});
