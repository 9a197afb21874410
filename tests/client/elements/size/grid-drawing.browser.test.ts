import { expect, test } from 'vitest';
import { gridDrawing } from '../../../../client/elements/size/grid-drawing.ts';
import { find, renderFresh } from '../../../support/render.ts';

test('gridDrawing has a seam between all blocks, drawn in one path however many there are', () => {
  const root = renderFresh(gridDrawing(3, 2, 'Three by two.'));
  expect(find(root, 'svg').getAttribute('viewBox')).toBe('0 0 3 2');
  expect(find(root, '.seams').getAttribute('d')).toBe('M0 1H3M1 0V2M2 0V2');
  expect(find(root, 'svg').getAttribute('aria-label')).toBe('Three by two.');
});

test('gridDrawing of one block has no seam', () => {
  expect(find(renderFresh(gridDrawing(1, 1, 'One.')), '.seams').getAttribute('d')).toBe('M0 0');
});
