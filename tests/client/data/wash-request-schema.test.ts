import * as v from 'valibot';
import { describe, expect, test } from 'vitest';
import { SIZE_LIMITS } from '#core/limits.ts';
import { washRequestSchema } from '../../../client/data/wash-request-schema.ts';

const swatch = { fabric: 'Rose', direction: 'width', before: 10, after: '9 1/2' };

describe('washRequestSchema', () => {
  test.each([
    {},
    { unit: 'cm', swatches: [swatch], washes: [1, 50], confidence: 99 },
    { swatches: [{ ...swatch, washes: 3, diagonals: { ac: '14', bd: 13.5 } }] },
    { wanted: { width: 40, height: '50 in' }, fit: '1/2', block: { cut: 8 }, cuts: [6, 7] },
    { layers: [{ role: 'top' }, { role: 'backing', prewashed: true }], grain: 'aligned' },
  ])('washRequestSchema takes %j', (request) => {
    expect(v.is(washRequestSchema, request)).toBe(true);
  });

  test.each([
    { confidence: 80 },
    { washes: [] },
    { washes: [0] },
    { washes: Array.from({ length: SIZE_LIMITS.washCounts + 1 }, () => 1) },
    { swatches: Array.from({ length: SIZE_LIMITS.swatches + 1 }, () => swatch) },
    { swatches: [{ ...swatch, direction: 'bias' }] },
    { sewn: { width: 40 } },
  ])('washRequestSchema refuses %#', (request) => {
    expect(v.is(washRequestSchema, request)).toBe(false);
  });
});
