import { expect, test } from 'vitest';
import { stripDrawing } from '../../../../client/elements/yardage/strip-drawing.ts';
import { find, renderFresh } from '../../../support/render.ts';

test('stripDrawing lays pieces side by side to scale, turned ones the other way round', () => {
  const strip = {
    length: 12,
    pieces: [
      { id: 'A', count: 2, turned: false },
      { id: 'B', count: 1, turned: true },
    ],
  };
  const sizes = [
    { id: 'A', width: 8, length: 9 },
    { id: 'B', width: 5, length: 12 },
  ];
  const root = renderFresh(stripDrawing(strip, { usable: 41, sizes, label: 'A strip.' }));
  expect(find(root, 'svg').getAttribute('viewBox')).toBe('0 0 41 12');
  expect(find(root, 'path:not(.bare)').getAttribute('d')).toBe(
    'M0 0h8v9h-8zM8 0h8v9h-8zM16 0h12v5h-12z',
  );
});
