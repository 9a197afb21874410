import { describe, expect, test } from 'vitest';
import { findScale, rulerBand } from '../../../client/drawing/ruler-band.ts';
import { find, renderFresh } from '../../support/render.ts';

const BAND = {
  mean: 4,
  interval: { low: 3, high: 5 },
  next: { low: 1, high: 7 },
  usual: { low: 2, high: 6 },
  points: [3.5, 4.5],
};
const SCALE = { low: 0, high: 10 };
const number = (root: ParentNode, selector: string, name: string) =>
  Number(find<Element>(root, selector).getAttribute(name));

describe('rulerBand', () => {
  test('rulerBand draws mean, intervals and specimens on one linear scale', () => {
    const root = renderFresh(rulerBand(BAND, SCALE, 'Flannel'));
    // From 14 at nothing to 346 at ten percent: 33.2 units a percent.
    const at = (percent: number) => 14 + 33.2 * percent;
    for (const [selector, { low, high }] of [
      ['.mean-band', BAND.interval],
      ['.next', BAND.next],
      ['.usual', BAND.usual],
    ] as const) {
      expect(number(root, selector, 'x')).toBeCloseTo(at(low), 0);
      expect(number(root, selector, 'width')).toBeCloseTo(33.2 * (high - low), 0);
    }
    expect(find<Element>(root, '.mean').getAttribute('d')).toMatch(/^M146\.8 /);
    const dots = [...root.querySelectorAll('.dot')].map((dot) => Number(dot.getAttribute('cx')));
    expect(dots.map((x) => (x - 14) / 33.2)).toEqual([
      expect.closeTo(3.5, 1),
      expect.closeTo(4.5, 1),
    ]);
    expect(find<Element>(root, 'svg').getAttribute('aria-label')).toBe('Flannel');
  });

  test('rulerBand draws no band where nothing is known of the spread', () => {
    const root = renderFresh(rulerBand({ mean: 4, points: [4] }, SCALE, ''));
    expect(root.querySelectorAll('rect').length).toBe(0);
    expect(root.querySelectorAll('.mean').length).toBe(1);
  });

  test('rulerBand stacks specimens that changed alike', () => {
    const root = renderFresh(rulerBand({ mean: 4, points: [4, 4, 4.5] }, SCALE, ''));
    const heights = [...root.querySelectorAll('.dot')].map((dot) => dot.getAttribute('cy'));
    expect(heights[0]).not.toBe(heights[1]);
    expect(heights[0]).toBe(heights[2]);
  });
});

test('findScale holds nothing, everything that was measured, and growth', () => {
  expect(findScale([])).toEqual({ low: 0, high: 1 });
  expect(findScale([2.1, -1.2])).toEqual({ low: -2, high: 3 });
});
