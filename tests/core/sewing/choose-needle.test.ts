import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { chooseNeedle } from '#core/sewing/choose-needle.ts';

describe('chooseNeedle', () => {
  test.each([
    [0, '80/12'],
    [1.5, '80/12'],
    [1.51, '90/14'],
    [3, '90/14'],
    [3.6, '100/16'],
    [6, '100/16'],
    [6.01, '110/18'],
    [40, '110/18'],
  ])('chooseNeedle(%d mm) is %s', (thickness, needle) => {
    expect(chooseNeedle(thickness)).toBe(needle);
  });

  test('chooseNeedle never gives a finer needle for thicker cloth', () => {
    const metric = (thickness: number) => Number(chooseNeedle(thickness).split('/')[0]);
    const thick = fc.double({ min: 0, max: 20, noNaN: true });
    fc.assert(
      fc.property(thick, thick, (one, more) => {
        expect(metric(one + more)).toBeGreaterThanOrEqual(metric(one));
      }),
    );
  });
});
