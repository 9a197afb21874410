import { describe, expect, test } from 'vitest';
import { drawBlocks } from '#core/drawing/draw-blocks.ts';
import type { PathShape } from '#core/drawing/shape.ts';
import { listTouching } from '#core/layout/list-touching.ts';
import { drawMeetings, drawRow } from '../../../../client/elements/layout/draw-board.ts';

const plain = { colorOf: () => undefined, isFine: true };
const traceOf = (cells: readonly string[]) =>
  drawMeetings(listTouching(cells), cells[0]?.length ?? 0).shapes.map((shape) =>
    shape.kind === 'path' ? shape.d : '',
  );

describe('drawRow', () => {
  test('drawRow draws a row as it would be drawn in the whole grid, turned blocks and all', () => {
    const cells = ['ABC', 'BCA', 'CAB'];
    const whole = drawBlocks({
      ...{ cells, x: 0, y: 0, faceWidth: 100, faceHeight: 100, colorOf: () => undefined },
      ...{ repeats: 3, hasLetters: false, alternating: true },
    });
    const pathOf = (shapes: readonly { readonly part: string }[], part: string, print: number) =>
      (shapes as readonly PathShape[]).find((shape) => shape.part === part && shape.print === print)
        ?.d;
    const top = drawRow({ ...plain, row: 'ABC', down: 0 });
    for (const print of [0, 1, 2]) {
      const own = pathOf(top.shapes, 'motif', print) ?? 'none';
      expect(pathOf(whole, 'motif', print)?.startsWith(own)).toBe(true);
    }
    const [even, odd] = [2, 3].map((down) => drawRow({ ...plain, row: 'BB', down }).shapes);
    expect(even).not.toEqual(odd);
    expect(drawRow({ ...plain, row: 'BB', down: 5 }).shapes).toEqual(odd);
  });

  test('drawRow fills a box of one block’s height, in no colour but the given', () => {
    const { box, shapes } = drawRow({
      row: 'AB',
      down: 1,
      colorOf: () => '#123456',
      isFine: false,
    });
    expect(box).toEqual({ x: 0, y: 0, width: 200, height: 100 });
    const grounds = shapes.flatMap((shape) => (shape.part === 'face' ? [shape.fill] : []));
    expect(grounds).toEqual(['#123456', '#123456']);
    expect(shapes.some(({ part }) => part === 'letter')).toBe(false);
  });
});

describe('drawMeetings', () => {
  test('drawMeetings marks a shared side along that side, a light rim below a dashed line', () => {
    expect(traceOf(['AA'])).toEqual(['M100 12v76', 'M100 12v76']);
    expect(traceOf(['A', 'A'])[0]).toBe('M12 100h76');
  });

  test('drawMeetings marks a shared corner by another form, a diamond on the corner', () => {
    expect(traceOf(['AB', 'CA'])[0]).toBe('M100 86l14 14l-14 14l-14 -14z');
    expect(traceOf(['BA', 'AC'])[0]).toBe('M100 86l14 14l-14 14l-14 -14z');
  });

  test('drawMeetings has one mark for each meeting, in one column too', () => {
    for (const cells of [['AAB', 'ABB', 'BAA'], ['A', 'A', 'A'], ['ABBA']]) {
      expect(traceOf(cells)[0]?.match(/M/g)).toHaveLength(listTouching(cells).length);
    }
  });
});
