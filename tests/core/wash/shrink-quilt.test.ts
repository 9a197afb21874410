import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { FABRICS, findFabric } from '#core/tables/fabrics.ts';
import {
  isMeasured,
  layerPulls,
  READING,
  type ShrinkRequest,
  shrinkQuilt,
  type WashedLayer,
} from '#core/wash/shrink-quilt.ts';
import { deepFreeze } from '../../support/deep-freeze.ts';

function layerOf(fabric: WashedLayer['fabric'], more: Partial<WashedLayer> = {}): WashedLayer {
  const row = findFabric(fabric);
  return {
    role: 'top',
    fabric,
    shrink: { length: row.length.usual, width: row.width.usual },
    shrinkWashes: 1,
    prewashed: false,
    gsm: row.gsm,
    ...more,
  };
}

const layers: fc.Arbitrary<WashedLayer> = fc
  .record({
    fabric: fc.constantFrom(...FABRICS.map(({ name }) => name)),
    shrink: fc.option(
      fc.record({
        length: fc.double({ min: -10, max: 30, noNaN: true }),
        width: fc.double({ min: -10, max: 30, noNaN: true }),
      }),
      { nil: undefined },
    ),
    shrinkWashes: fc.integer({ min: 1, max: 50 }),
    prewashed: fc.boolean(),
    gsm: fc.integer({ min: 10, max: 2000 }),
  })
  .map(({ shrink, fabric, ...more }) =>
    layerOf(fabric, shrink === undefined ? { gsm: more.gsm } : { ...more, shrink }),
  );
const requests: fc.Arbitrary<ShrinkRequest> = fc.record({
  layers: fc.array(layers, { minLength: 2, maxLength: 4 }),
  grain: fc.constantFrom('alternating' as const, 'aligned' as const),
  washes: fc.integer({ min: 1, max: 50 }),
});
const classic = [layerOf('quilting-cotton'), layerOf('flannel', { role: 'backing' })];

describe('shrinkQuilt', () => {
  test('shrinkQuilt of cotton on flannel settles by hand-worked figures', () => {
    // Along: 6 % stretched with 170, 3.5 % buckled with 140/4; across: 3.5 % and 2.5 %.
    const along = (170 * 0.05 + 35 * 0.035) / 205;
    const across = (170 * 0.025 + 35 * 0.025) / 205;
    const aligned = shrinkQuilt({ layers: classic, grain: 'aligned', washes: 1 });
    expect(aligned.usual.height).toBeCloseTo(along, 12);
    expect(aligned.usual.width).toBeCloseTo(across, 12);
    const turned = shrinkQuilt({ layers: classic, grain: 'alternating', washes: 1 });
    expect(turned.usual.width).toBeCloseTo((along + across) / 2, 12);
    expect(turned.usual.height).toBe(turned.usual.width);
  });

  test('shrinkQuilt bounds what nobody measured by the lowest mean and the highest rate', () => {
    const { least, most } = shrinkQuilt({ layers: classic, grain: 'aligned', washes: 1 });
    expect(least.height).toBeCloseTo((140 * 0.02 + 170 * 0.03) / 310, 12);
    expect(most.height).toBeCloseTo(0.1, 12);
  });

  test('shrinkQuilt has the usual between least and most, each below the whole', () => {
    fc.assert(
      fc.property(requests, (request) => {
        const { least, usual, most } = shrinkQuilt(deepFreeze(request));
        for (const side of ['width', 'height'] as const) {
          expect(usual[side]).toBeGreaterThanOrEqual(least[side] - 1e-12);
          expect(usual[side]).toBeLessThanOrEqual(most[side] + 1e-12);
          expect(most[side]).toBeLessThan(1);
        }
      }),
    );
  });

  test('shrinkQuilt shrinks no less when a layer shrinks more', () => {
    const more = fc.double({ min: 0, max: 5, noNaN: true });
    fc.assert(
      fc.property(requests, more, (request, by) => {
        // As if measured, so that the table has no say.
        const own = request.layers.map((layer) => ({ ...layer, shrinkWashes: 2 }));
        const [first, ...rest] = own;
        if (first === undefined) return;
        const { length, width } = first.shrink;
        const raised = { ...first, shrink: { length: length + by, width: width + by } };
        const before = shrinkQuilt({ ...request, layers: own });
        const after = shrinkQuilt({ ...request, layers: [raised, ...rest] });
        for (const doubt of ['least', 'usual', 'most'] as const) {
          expect(after[doubt].width).toBeGreaterThanOrEqual(before[doubt].width - 1e-12);
        }
      }),
    );
  });

  test('shrinkQuilt shrinks no more once every layer was prewashed', () => {
    fc.assert(
      fc.property(requests, (request) => {
        const washed = (prewashed: boolean) =>
          shrinkQuilt({
            ...request,
            layers: request.layers.map((layer) => ({
              ...layer,
              shrink: {
                length: Math.abs(layer.shrink.length),
                width: Math.abs(layer.shrink.width),
              },
              prewashed,
            })),
          }).usual;
        expect(washed(true).height).toBeLessThanOrEqual(washed(false).height + 1e-12);
      }),
    );
  });

  test('shrinkQuilt does not depend on the order of the layers', () => {
    fc.assert(
      fc.property(requests, (request) => {
        const one = shrinkQuilt(request).usual;
        const other = shrinkQuilt({ ...request, layers: request.layers.toReversed() }).usual;
        expect(other.width).toBeCloseTo(one.width, 12);
        expect(other.height).toBeCloseTo(one.height, 12);
      }),
    );
  });

  test('shrinkQuilt believes a sandwich in the direction it was measured in, and the model in the other', () => {
    const course = { limit: 0.08, rate: 0.5 };
    const sandwich = { length: { low: course, usual: course, high: course } };
    const request = { layers: classic, grain: 'aligned', washes: 2 } as const;
    const { usual } = shrinkQuilt({ ...request, sandwich });
    expect(usual.height).toBeCloseTo(0.06, 12);
    expect(usual.width).toBe(shrinkQuilt(request).usual.width);
  });
});

describe('layerPulls', () => {
  test('layerPulls weighs cloth by its mass and batting by a quarter of it', () => {
    const pulls = layerPulls(
      { layers: [layerOf('flannel'), layerOf('cotton-batting')], washes: 1 },
      'length',
    );
    expect(pulls.map(({ weight }) => weight)).toEqual([170, 37.5]);
    expect(pulls[0]?.rate).toBeCloseTo(0.05, 12);
  });

  test('layerPulls knows a measured rate to an eighth on ten inches either way', () => {
    const own = layerOf('flannel', { shrink: { length: 5, width: 3 } });
    const rate = (doubt: 'low' | 'usual' | 'high') =>
      layerPulls({ layers: [own], washes: 1 }, 'length', doubt)[0]?.rate ?? 0;
    expect(rate('usual')).toBeCloseTo(0.05, 12);
    expect(rate('high') - rate('usual')).toBeCloseTo(READING, 12);
    expect(rate('usual') - rate('low')).toBeCloseTo(READING, 12);
  });
});

describe('isMeasured', () => {
  test('isMeasured only where a rate or its wash count differs from the table', () => {
    const fabric = findFabric('flannel');
    const table = { shrink: { length: 5, width: 2.5 }, shrinkWashes: 1 };
    expect(isMeasured(table, fabric)).toBe(false);
    expect(isMeasured({ ...table, shrinkWashes: 3 }, fabric)).toBe(true);
    expect(isMeasured({ ...table, shrink: { length: 5, width: 3 } }, fabric)).toBe(true);
  });
});
