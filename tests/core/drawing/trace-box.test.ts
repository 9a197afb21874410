import { expect, test } from 'vitest';
import { traceBox } from '#core/drawing/trace-box.ts';

test('traceBox(box) goes round the four sides and closes', () => {
  expect(traceBox({ x: 1, y: 2, width: 30.04, height: 40 })).toBe('M1 2h30v40h-30z');
});
