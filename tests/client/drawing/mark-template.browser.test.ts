import { expect, test } from 'vitest';
import { markTemplate } from '../../../client/drawing/mark-template.ts';
import { find, renderFresh } from '../../support/render.ts';

const words = {
  roll: 'along the roll',
  apart: '18 cm apart',
  check: 'check',
  checkAfter: 'after',
  inches: '2 in',
  centimetres: '5 cm',
};

test('markTemplate is as many millimetres large as it has units', () => {
  const svg = find<SVGSVGElement & HTMLElement>(renderFresh(markTemplate(180, words)), 'svg');
  const { width } = svg.viewBox.baseVal;
  expect(svg.getAttribute('width')).toBe(`${width}mm`);
  // CSS: 1 in is 96 px.
  expect(svg.getBoundingClientRect().width).toBeCloseTo((width / 25.4) * 96, 0);
});

test('markTemplate has three crosses at each end each way, and two lines to check by', () => {
  const root = renderFresh(markTemplate(180, words));
  expect(root.querySelectorAll('.cross').length).toBe(12);
  const lines = [...root.querySelectorAll<SVGPathElement>('.check')].map(
    (line) => line.getBBox().width,
  );
  expect(lines).toEqual([expect.closeTo(50, 3), expect.closeTo(50.8, 3)]);
});
