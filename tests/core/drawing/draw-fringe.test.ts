import { describe, expect, test } from 'vitest';
import { drawFringe } from '#core/drawing/draw-fringe.ts';

const FRAME = {
  columns: 3,
  rows: 2,
  x: 0,
  y: 0,
  faceWidth: 100,
  faceHeight: 100,
  seam: 20,
  pitch: 5,
  bloomed: false,
};
const snips = (frame = FRAME) => drawFringe(frame).filter(({ part }) => part === 'snip');

describe('drawFringe', () => {
  test('drawFringe stands on every inner seam and on the four edges', () => {
    const [edge, seams] = snips();
    // 3 blocks by 2 have two seams down and one across: 2·240 + 340 long.
    expect(seams?.d).toBe('M120 0v240M220 0v240M0 120h340');
    expect(edge?.d).toBe('M10 0v240M330 0v240M0 10h340M0 230h340');
  });

  test('drawFringe cuts its tags at the pitch', () => {
    for (const { dash = '' } of snips()) {
      const [tag = 0, gap = 0] = dash.split(' ').map(Number);
      expect(tag + gap).toBeCloseTo(5, 9);
    }
  });

  test('drawFringe of one block has edges alone', () => {
    expect(snips({ ...FRAME, columns: 1, rows: 1 })).toHaveLength(1);
  });

  test('drawFringe blooms wider than it stands when sewn', () => {
    const breadth = (bloomed: boolean) => {
      const shapes = drawFringe({ ...FRAME, bloomed });
      return Math.max(...shapes.slice(shapes.length / 2).map((shape) => shape.breadth ?? 0));
    };
    expect(breadth(true)).toBeGreaterThan(breadth(false));
  });
});
