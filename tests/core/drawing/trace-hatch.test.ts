import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { traceHatch } from '#core/drawing/trace-hatch.ts';

const box = fc.record({
  x: fc.integer({ min: -500, max: 500 }),
  y: fc.integer({ min: -500, max: 500 }),
  width: fc.integer({ min: 0, max: 1000 }),
  height: fc.integer({ min: 0, max: 1000 }),
});

describe('traceHatch', () => {
  test('traceHatch(box, pitch) stays inside the box, every line slanting alike', () => {
    fc.assert(
      fc.property(box, fc.integer({ min: 5, max: 90 }), (frame, pitch) => {
        for (const line of traceHatch(frame, pitch).split('M').slice(1)) {
          const [x1 = 0, y1 = 0, x2 = 0, y2 = 0] = line.split(/[ L]/).map(Number);
          expect(x1 + y1).toBeCloseTo(x2 + y2, 6);
          expect(Math.min(x1, x2)).toBeGreaterThanOrEqual(frame.x);
          expect(Math.max(x1, x2)).toBeLessThanOrEqual(frame.x + frame.width);
          expect(Math.min(y1, y2)).toBeGreaterThanOrEqual(frame.y);
          expect(Math.max(y1, y2)).toBeLessThanOrEqual(frame.y + frame.height);
        }
      }),
    );
  });

  test('traceHatch of a box without area draws nothing', () => {
    expect(traceHatch({ x: 0, y: 0, width: 0, height: 40 }, 10)).toBe('');
    expect(traceHatch({ x: 0, y: 0, width: 40, height: 0 }, 10)).toBe('');
  });
});
