/**
 * Row ends against sewing many rows: each cut and each join is given a normal error, two rows are
 * laid together at one end or at their matched middle, and the step at the end is measured.
 * Nothing of the formula is used, only where a join takes cloth from.
 */
import { describe, expect, test } from 'vitest';
import { predictMismatch } from '#core/sewing/predict-mismatch.ts';

const ROWS = 20_000;
const TRUENESS = { seam: 1.6, cut: 1.6, ease: 12.7 };

/** A plain generator of normal errors, the same on every run. */
function startErrors(): (deviation: number) => number {
  let state = 20_260_401;
  const next = () => {
    state = (Math.imul(state, 1_664_525) + 1_013_904_223) >>> 0;
    return (state + 0.5) / 4_294_967_296;
  };
  return (deviation) =>
    deviation * Math.sqrt(-2 * Math.log(next())) * Math.cos(2 * Math.PI * next());
}

/** Lengths of a row by which it misses its due: from end to end, and from the middle to its end. */
function sewRow(columns: number, err: (deviation: number) => number) {
  const blocks = Array.from({ length: columns }, () => err(TRUENESS.cut));
  for (let join = 1; join < columns; join += 1) {
    const taken = err(TRUENESS.seam);
    blocks[join - 1] = (blocks[join - 1] ?? 0) - taken;
    blocks[join] = (blocks[join] ?? 0) - taken;
  }
  const sum = (list: readonly number[]) => list.reduce((total, one) => total + one, 0);
  const isOdd = columns % 2 === 1;
  const middle = Math.floor(columns / 2);
  const half = isOdd
    ? (blocks[middle] ?? 0) / 2 + sum(blocks.slice(middle + 1))
    : sum(blocks.slice(middle));
  return { whole: sum(blocks), half };
}

function measureEnds(columns: number) {
  const err = startErrors();
  const steps = Array.from({ length: ROWS }, () => {
    const [one, other] = [sewRow(columns, err), sewRow(columns, err)];
    return { fromEnd: one.whole - other.whole, fromMiddle: one.half - other.half };
  });
  const deviation = (list: readonly number[]) =>
    Math.sqrt(list.reduce((sum, step) => sum + step ** 2, 0) / list.length);
  const within = (list: readonly number[]) =>
    list.filter((step) => Math.abs(step) <= TRUENESS.ease).length / list.length;
  const ends = steps.map((step) => step.fromEnd);
  const middles = steps.map((step) => step.fromMiddle);
  return {
    fromOneEnd: deviation(ends),
    fromCentre: deviation(middles),
    withinFromOneEnd: within(ends),
    withinFromCentre: within(middles),
  };
}

describe('predictMismatch', () => {
  test.each([2, 3, 6, 7, 10, 15])(
    'predictMismatch(%d columns) joined from one end is what sewing gives, within 2 %%',
    (columns) => {
      const sewn = measureEnds(columns);
      const told = predictMismatch(columns, TRUENESS);
      expect(Math.abs(told.fromOneEnd / sewn.fromOneEnd - 1)).toBeLessThan(0.02);
      expect(Math.abs(told.withinFromOneEnd - sewn.withinFromOneEnd)).toBeLessThan(0.012);
    },
  );

  test.each([6, 7, 10, 15])(
    'predictMismatch(%d columns) joined from the middle is a little more than sewing gives',
    (columns) => {
      const sewn = measureEnds(columns);
      const told = predictMismatch(columns, TRUENESS);
      expect(told.fromCentre).toBeGreaterThan(sewn.fromCentre);
      expect(told.fromCentre).toBeLessThan(sewn.fromCentre * 1.1);
      expect(told.withinFromCentre).toBeLessThan(sewn.withinFromCentre + 0.012);
      // Half of what lands at one end would promise too much.
      expect(sewn.fromCentre).toBeGreaterThan(told.fromOneEnd / 2);
    },
  );
});
