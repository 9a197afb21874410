import { describe, expect, test } from 'vitest';
import { startReading } from '#core/wish/reading.ts';
import { resolveShape } from '#core/wish/resolve-shape.ts';

describe('resolveShape', () => {
  test('resolveShape without word is four to five, and tells it', () => {
    const reading = startReading('in');
    expect(resolveShape(reading, undefined)).toEqual({ ratio: 0.8 });
    expect(reading.assumptions.at(-1)).toMatchObject({ path: 'shape.ratio', value: 0.8 });
    expect(reading.kept).toEqual([]);
  });

  test('resolveShape keeps a ratio of its own', () => {
    const reading = startReading('in');
    expect(resolveShape(reading, { ratio: 1 })).toEqual({ ratio: 1 });
    expect(reading.kept).toEqual([['shape.ratio', '1']]);
  });

  test('resolveShape reads a target below shape, faults too', () => {
    const reading = startReading('in');
    expect(resolveShape(reading, { target: { width: 40, height: '1 yd' } })).toEqual({
      target: { width: 40, height: 36, at: 'washed' },
    });
    expect(reading.kept.map(([key]) => key)).toEqual(['shape.target.width', 'shape.target.height']);
    resolveShape(reading, { target: { width: 'x', height: 40 } });
    expect(reading.faults).toMatchObject([{ path: ['shape', 'target', 'width'] }]);
  });
});
