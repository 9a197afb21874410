import { describe, expect, test } from 'vitest';
import type { WashRequest } from '#core/contract.ts';
import { fitCourses, groupSwatches } from '#core/wash/read-swatches.ts';
import { findRanges, shrinkSandwich, withCourses } from '#core/wash/shrink-sandwich.ts';
import { resolveWash } from '#core/wish/resolve-wash.ts';

function prepare(request: WashRequest) {
  const read = resolveWash({ grain: 'aligned', ...request });
  if (!read.ok) throw new Error(JSON.stringify(read.faults));
  const { input } = read.value;
  return { input, courses: fitCourses(groupSwatches(input.swatches, 0.95)) };
}

const swatch = (fabric: string, direction: 'length' | 'width', after: number) => ({
  fabric,
  direction,
  before: 10,
  after,
});
const both = (fabric: string, along: number, across: number) => [
  swatch(fabric, 'length', along),
  swatch(fabric, 'width', across),
];

describe('shrinkSandwich', () => {
  test('shrinkSandwich without swatches is the model of the table, and not measured', () => {
    const { input, courses } = prepare({});
    const { usual, isMeasured } = shrinkSandwich(input, courses, 1);
    expect(usual.height).toBeCloseTo((170 * 0.05 + 35 * 0.035) / 205, 12);
    expect(isMeasured).toBe(false);
  });

  test('shrinkSandwich believes one quilted test block over any model', () => {
    const { input, courses } = prepare({ swatches: both('sandwich', 9.7, 9.8) });
    const { usual, isMeasured } = shrinkSandwich(input, courses, 1);
    expect(usual.height).toBeCloseTo(0.03, 12);
    expect(usual.width).toBeCloseTo(0.02, 12);
    expect(isMeasured).toBe(true);
  });

  test('shrinkSandwich takes the mean of both directions where blocks alternate', () => {
    const { input, courses } = prepare({
      grain: 'alternating',
      swatches: both('sandwich', 9.7, 9.8),
    });
    const { usual } = shrinkSandwich(input, courses, 1);
    expect(usual.height).toBeCloseTo(0.025, 12);
    expect(usual.width).toBeCloseTo(0.025, 12);
  });

  test('shrinkSandwich measured one way only keeps the model the other way', () => {
    const { input, courses } = prepare({ swatches: [swatch('sandwich', 'length', 9.7)] });
    const found = shrinkSandwich(input, courses, 1);
    expect(found.usual.height).toBeCloseTo(0.03, 12);
    expect(found.usual.width).toBeCloseTo((170 * 0.025 + 35 * 0.025) / 205, 12);
    expect(found.isMeasured).toBe(false);
  });

  test('shrinkSandwich puts swatches of a layer in the place of the table', () => {
    const { input, courses } = prepare({
      swatches: [...both('flannel', 9.2, 9.5), ...both('quilting-cotton', 9.8, 9.9)],
    });
    const { usual, isMeasured } = shrinkSandwich(input, courses, 1);
    expect(usual.height).toBeCloseTo((170 * 0.08 + 35 * 0.02) / 205, 12);
    expect(usual.width).toBeCloseTo((170 * 0.05 + 35 * 0.01) / 205, 12);
    expect(isMeasured).toBe(true);
  });

  test('shrinkSandwich is measured when swatches and rates given by hand make up the layers', () => {
    const layers = [{ role: 'top', shrink: { length: 2, width: 1 } }, { role: 'backing' }] as const;
    const half = prepare({ layers });
    expect(shrinkSandwich(half.input, half.courses, 1).isMeasured).toBe(false);
    const whole = prepare({ layers, swatches: both('flannel', 9.2, 9.5) });
    expect(shrinkSandwich(whole.input, whole.courses, 1).isMeasured).toBe(true);
  });

  test('shrinkSandwich of cloth that grew is growth', () => {
    const { input, courses } = prepare({ swatches: both('sandwich', 10.1, 10.2) });
    const { usual } = shrinkSandwich(input, courses, 1);
    expect(usual.height).toBeCloseTo(-0.01, 12);
    expect(usual.width).toBeCloseTo(-0.02, 12);
  });
});

describe('withCourses', () => {
  test('withCourses gives a layer the courses of its own fabric alone', () => {
    const { input, courses } = prepare({ swatches: [swatch('flannel', 'length', 9.2)] });
    const [top, backing] = input.layers.map((layer) => withCourses(layer, courses));
    expect(top?.courses).toEqual({});
    expect(Object.keys(backing?.courses ?? {})).toEqual(['length']);
  });
});

describe('findRanges', () => {
  test('findRanges of a cloth that nobody washed is empty', () => {
    expect(findRanges([], 'sandwich')).toEqual({});
  });
});
