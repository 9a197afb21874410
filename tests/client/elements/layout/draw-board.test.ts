import { describe, expect, test } from 'vitest';
import { listTouching } from '#core/layout/list-touching.ts';
import { drawBoard } from '../../../../client/elements/layout/draw-board.ts';

const draw = (cells: readonly string[]) =>
  drawBoard({ cells, colorOf: () => undefined, meetings: listTouching(cells) });
const traceOf = (cells: readonly string[]) =>
  draw(cells).shapes.flatMap((shape) =>
    shape.kind === 'path' && shape.part === 'cut' ? [shape.d] : [],
  );

describe('drawBoard', () => {
  test('drawBoard has no mark where nothing touches, and no letters: they stand in the table', () => {
    const { shapes, box } = draw(['AB', 'CD']);
    expect(shapes.filter(({ part }) => part === 'cut' || part === 'letter')).toEqual([]);
    expect(box).toEqual({ x: 0, y: 0, width: 200, height: 200 });
  });

  test('drawBoard marks a shared side along that side, a light rim below a dashed line', () => {
    expect(traceOf(['AA'])).toEqual(['M100 12v76', 'M100 12v76']);
    expect(traceOf(['A', 'A'])[0]).toBe('M12 100h76');
  });

  test('drawBoard marks a shared corner by another form, a diamond on the corner', () => {
    expect(traceOf(['AB', 'CA'])[0]).toBe('M100 86l14 14l-14 14l-14 -14z');
    expect(traceOf(['BA', 'AC'])[0]).toBe('M100 86l14 14l-14 14l-14 -14z');
  });

  test('drawBoard has one mark for each meeting, in one column too', () => {
    for (const cells of [['AAB', 'ABB', 'BAA'], ['A', 'A', 'A'], ['ABBA']]) {
      expect(traceOf(cells)[0]?.match(/M/g)).toHaveLength(listTouching(cells).length);
    }
  });

  test('drawBoard takes a colour of one’s own', () => {
    const { shapes } = drawBoard({ cells: ['AB'], colorOf: () => '#123456', meetings: [] });
    expect(shapes.some((shape) => 'fill' in shape && shape.fill === '#123456')).toBe(true);
  });
});
