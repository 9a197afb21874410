import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { courseChart, spreadTags } from '../../../client/drawing/course-chart.ts';
import { renderFresh } from '../../support/render.ts';

const LINE = { tag: 'A', limit: 8, rate: 0.5, points: [{ washes: 1, shrink: 4 }] };
const BARS = [
  { washes: 1, shrink: 4, low: 3, high: 5 },
  { washes: 3, shrink: 7, low: 6, high: 8 },
];
const CHART = { lines: [LINE], bars: BARS, label: 'Shrink', xTitle: 'washes', yTitle: '%' };

describe('courseChart', () => {
  test('courseChart draws the fitted line through the point that was measured', () => {
    const root = renderFresh(courseChart(CHART));
    const dot = root.querySelector('.dot');
    const [x, y] = ['cx', 'cy'].map((name) => Number(dot?.getAttribute(name)));
    const points = (root.querySelector('.course')?.getAttribute('d') ?? '').slice(1).split('L');
    const near = points
      .map((point) => point.split(' ').map(Number))
      .toSorted(
        ([one = 0], [other = 0]) => Math.abs(one - (x ?? 0)) - Math.abs(other - (x ?? 0)),
      )[0];
    expect(Math.abs((near?.[1] ?? 0) - (y ?? 0))).toBeLessThan(5);
  });

  test('courseChart draws a bar for each count asked for, as high as the quilt may be off', () => {
    const root = renderFresh(courseChart(CHART));
    const heights = [...root.querySelectorAll('.doubt')].map((bar) =>
      Number(bar.getAttribute('height')),
    );
    // Eight percent on 168 units: two percent are 42.
    expect(heights).toEqual([expect.closeTo(42, 0), expect.closeTo(42, 0)]);
    const labels = [...root.querySelectorAll('text')].map((text) => text.textContent);
    expect(labels).toEqual(expect.arrayContaining(['1', '3', 'A', 'washes', '%']));
  });

  test('courseChart has room for cloth that grows', () => {
    const root = renderFresh(
      courseChart({ ...CHART, lines: [{ ...LINE, limit: -2, points: [] }] }),
    );
    expect(root.textContent).toContain('-2');
  });
});

describe('spreadTags', () => {
  test('spreadTags keeps letters a line apart and in their order', () => {
    const heights = fc.array(fc.double({ min: 0, max: 200, noNaN: true }), { maxLength: 8 });
    fc.assert(
      fc.property(heights, (wanted) => {
        const placed = spreadTags(wanted);
        const order = wanted
          .map((_, index) => index)
          .toSorted((one, other) => (wanted[one] ?? 0) - (wanted[other] ?? 0));
        const gaps = order
          .slice(1)
          .map((index, at) => (placed[index] ?? 0) - (placed[order[at] ?? 0] ?? 0));
        expect(gaps.every((gap) => gap >= 12.7)).toBe(true);
      }),
    );
  });

  test('spreadTags leaves letters alone that are far apart', () => {
    expect(spreadTags([10, 50, 30])).toEqual([10, 50, 30]);
  });
});
