import { expect, test } from 'vitest';
import { drawRows } from '#core/drawing/steps/draw-rows.ts';
import { listTexts, sceneFor, tracePart } from '../../../support/scene.ts';

test.each([4, 5, 12])(
  'drawRows of %d blocks marks the middle of the board, where the row has its own',
  (columns) => {
    const scene = sceneFor({ target: { columns, rows: 3 } });
    const shapes = drawRows(scene);
    // The row is centred on the board, so its middle is at 150 whether it falls on a block or between two.
    expect(tracePart(shapes, 'measure')).toMatch(/^M150 /);
    expect(listTexts(shapes).join('')).toBe(scene.cells.slice(0, 2).join(''));
  },
);
