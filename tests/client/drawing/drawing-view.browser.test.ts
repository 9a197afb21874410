import { describe, expect, test } from 'vitest';
import { drawQuilt } from '#core/drawing/draw-quilt.ts';
import { writeSvg } from '#core/drawing/write-svg.ts';
import { drawingView } from '../../../client/drawing/drawing-view.ts';
import { planThrow } from '../../support/plan-throw.ts';
import { find, renderFresh } from '../../support/render.ts';

/** Each shape with its attributes in the order of the alphabet. */
function listShapes(root: ParentNode): readonly string[] {
  return [...root.querySelectorAll('path, text')].map((shape) =>
    [
      shape.tagName,
      ...[...shape.attributes].map(({ name, value }) => `${name}=${value}`).toSorted(),
      shape.textContent,
    ].join(' '),
  );
}

describe('drawingView', () => {
  test.each(['sewn', 'washed'] as const)(
    'drawingView shows a %s quilt just as its SVG file does',
    (state) => {
      const drawing = drawQuilt(planThrow(), state);
      const file = new DOMParser().parseFromString(
        writeSvg(drawing, { title: 'a', description: 'b' }),
        'image/svg+xml',
      );
      const shown = listShapes(renderFresh(drawingView(drawing))).map((shape) =>
        shape.replace(' paint-order=stroke', ''),
      );
      expect(shown).toEqual(
        listShapes(file).map((shape) => shape.replace(' paint-order=stroke', '')),
      );
    },
  );

  test('drawingView with a label is an image, without one decoration', () => {
    const drawing = { box: { x: 0, y: 0, width: 1, height: 1 }, shapes: [] };
    const image = find(renderFresh(drawingView(drawing, 'picture', 'A quilt')), 'svg.picture');
    expect([image.getAttribute('role'), image.getAttribute('aria-label')]).toEqual([
      'img',
      'A quilt',
    ]);
    const plain = find(renderFresh(drawingView(drawing)), 'svg');
    expect([plain.getAttribute('role'), plain.getAttribute('aria-hidden')]).toEqual([null, 'true']);
  });

  test('drawingView draws in the namespace of SVG', () => {
    const root = renderFresh(drawingView(drawQuilt(planThrow(), 'sewn')));
    expect(find(root, '.face')).toBeInstanceOf(SVGPathElement);
  });
});
