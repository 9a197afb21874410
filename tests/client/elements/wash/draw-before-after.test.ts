import { describe, expect, test } from 'vitest';
import { drawBeforeAfter, guessGrid } from '../../../../client/elements/wash/draw-before-after.ts';

const QUILT = {
  unit: 'in',
  grain: 'alternating',
  grid: { columns: 4, rows: 5 },
  seam: 1,
  sewn: { width: 42, height: 52 },
  washed: { width: 40, height: 49.5 },
  low: { width: 39, height: 48 },
  high: { width: 41, height: 51 },
} as const;

/** Breadth of a path of straight lines. */
function measure(d: string): number {
  const xs = [...d.matchAll(/[MLH]\s*(-?[\d.]+)/g)].map(([, x]) => Number(x));
  const steps = [...d.matchAll(/h\s*(-?[\d.]+)/g)].map(([, x]) => Number(x));
  return steps.length > 0 ? Math.max(...steps.map(Math.abs)) : Math.max(...xs) - Math.min(...xs);
}

describe('drawBeforeAfter', () => {
  test('drawBeforeAfter draws the size before, the smallest and the largest to scale in millimetres', () => {
    const outlines = drawBeforeAfter(QUILT).shapes.flatMap((shape) =>
      shape.kind === 'path' && shape.part === 'outline' ? [measure(shape.d)] : [],
    );
    expect(outlines.map((breadth) => Math.round(breadth / 2.54) / 10)).toEqual([42, 39, 41]);
  });

  test('drawBeforeAfter draws a face for each block', () => {
    const letters = drawBeforeAfter(QUILT).shapes.filter(({ part }) => part === 'letter');
    expect(letters.length).toBe(20);
  });
});

describe('guessGrid', () => {
  test('guessGrid never leaves the range of what can be drawn', () => {
    expect(guessGrid({ width: 1, height: 1 }, 7)).toEqual({ columns: 1, rows: 1 });
    expect(guessGrid({ width: 9999, height: 70 }, 7)).toEqual({ columns: 100, rows: 10 });
  });
});
