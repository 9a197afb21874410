import { describe, expect, test } from 'vitest';
import { drawQuilt } from '#core/drawing/draw-quilt.ts';
import { writeSvg } from '#core/drawing/write-svg.ts';
import { planThrow } from '../../support/plan-throw.ts';

describe('writeSvg', () => {
  test('writeSvg escapes every text that it is given', () => {
    const text = `<script>"&'`;
    const svg = writeSvg(
      {
        box: { x: 0, y: 0, width: 1, height: 1 },
        shapes: [{ kind: 'text', part: 'letter', x: 0, y: 0, size: 1, text, fill: text }],
      },
      { title: text, description: text },
    );
    expect(svg).not.toContain('<script');
    expect(svg.split('&lt;script&gt;&quot;&amp;&#39;')).toHaveLength(5);
  });

  test('writeSvg names the picture and gives its box and each shape', () => {
    const drawing = drawQuilt(planThrow(), 'washed');
    const svg = writeSvg(drawing, { title: 'A throw', description: 'Five by six' });
    const { x, y, width, height } = drawing.box;
    expect(svg).toContain('role="img" aria-labelledby="title desc"');
    expect(svg).toContain(`viewBox="${x} ${y} ${width} ${height}"`);
    expect(svg.match(/<(path|text) /g)?.length).toBe(drawing.shapes.length);
    expect(svg).not.toMatch(/undefined|NaN|style=/);
  });
});
