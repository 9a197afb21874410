import { expect, test } from 'vitest';
import { markGuide } from '../../../client/drawing/mark-guide.ts';
import { renderFresh } from '../../support/render.ts';

const words = { selvage: 's', tenth: 't', roll: 'r', specimen: '15 in', marks: '10 in' };
const GUIDE = { specimen: 15, marks: 10, bolt: 44, label: 'How to mark', words };
const box = (element: Element) =>
  ['x', 'y', 'width', 'height'].map((name) => Number(element.getAttribute(name)));

test('markGuide draws the marks as far apart as they are, on the swatch as large as it is', () => {
  const root = renderFresh(markGuide(GUIDE));
  const swatch = [...root.querySelectorAll('rect.swatch')].find((rect) =>
    rect.classList.contains('cloth'),
  );
  const [, , side = 0] = swatch === undefined ? [] : box(swatch);
  const xs = [...root.querySelectorAll('.dot')].map((dot) => Number(dot.getAttribute('cx')));
  expect(xs.length).toBe(12);
  // AATCC TM135: marks of 10 in on specimens of 15 in.
  expect((Math.max(...xs) - Math.min(...xs)) / side).toBeCloseTo(10 / 15, 2);
});

test('markGuide keeps the swatches clear of the tenth of the width next to each selvage', () => {
  const root = renderFresh(markGuide(GUIDE));
  const [bolt, ...rest] = [...root.querySelectorAll('rect')];
  const [left = 0, , width = 0] = bolt === undefined ? [] : box(bolt);
  const swatches = rest.filter((rect) => rect.getAttribute('class') === 'swatch');
  expect(swatches.length).toBe(3);
  for (const swatch of swatches) {
    const [x = 0, , side = 0] = box(swatch);
    expect(side / width).toBeCloseTo(15 / 44, 2);
    expect(x).toBeGreaterThanOrEqual(left + width / 10 - 0.1);
    expect(x + side).toBeLessThanOrEqual(left + width - width / 10 + 0.1);
  }
});
