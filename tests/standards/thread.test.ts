/**
 * Thread of the lockstitch (type 301).
 * - C = 2 + 2·T·S, inches of thread for an inch of seam, T thickness in inches, S stitches an inch;
 *   worked there: T = 0.01, S = 10 gives 2.2. textilecalculation.blogspot.com, 2015. Read.
 * - Other T and S by the same formula: arithmetic.
 * - Ratio of 2.5 for 301, a seam of 220 cm taking 550 cm, 275 by the needle and 275 by the bobbin;
 *   2.5 mm is 10.16 stitches an inch: melgeecrafts.com, low authority. Read at second hand.
 * - Unpicking: a seam of 15 cm gave 19.5 cm, so 1.3, and 62 cm, so 4.1; 100 cm of seam takes 540 cm:
 *   apparelscience.com (stitch 401; the arithmetic is the same). Read.
 * - Elliptical and straight paths of the thread, which the rectangle bounds: geometry. That stitches
 *   are taken as rectangular, elliptical or circular: Chauhan and Ghosh, abstract. Read.
 */
import { describe, expect, test } from 'vitest';
import { planThread } from '#core/sewing/plan-thread.ts';
import { threadRatio } from '#core/sewing/thread-ratio.ts';

const INCH = 25.4;

const quilt = {
  grid: { columns: 1, rows: 1 },
  block: { cut: 100, seam: 10, snipDepth: 5, snipPitch: 6 },
  thickness: 1,
};
const stitching = {
  length: 2.5,
  tail: 0,
  link: 0,
  chained: false,
  borderPasses: 1,
  bobbin: 1000,
};

describe('threadRatio', () => {
  test.each([
    [0.01, 10, 2.2, 'read'],
    [0.025, 10, 2.5, 'arithmetic; the ratio usual for 301'],
    [0.05, 10, 3, 'arithmetic'],
    [0.06, 8, 2.96, 'arithmetic'],
    [0.08, 8, 3.28, 'arithmetic'],
    [0.1, 10, 4, 'arithmetic'],
  ])('threadRatio(%d in thick, %d stitches an inch) is %d (%s)', (thickness, stitches, ratio) => {
    expect(threadRatio(thickness * INCH, INCH / stitches)).toBeCloseTo(ratio, 12);
  });

  test('threadRatio(2.5 mm stitches) takes 10.16 stitches an inch (read at second hand)', () => {
    expect(INCH / 2.5).toBeCloseTo(10.16, 12);
    expect(threadRatio(0.025 * INCH, 2.5)).toBeCloseTo(2 + 2 * 0.025 * 10.16, 12);
  });

  test.each([
    [2.5, 0.5, 2.4, 2.101, 2.0396],
    [2.5, 1, 2.8, 2.3013, 2.1541],
    [2.5, 1.5, 3.2, 2.5527, 2.3324],
    [3, 1.5, 3, 2.4221, 2.2361],
    [2.5, 2.5, 4, Math.PI, 2.8284],
  ])(
    'threadRatio(%d mm stitches, %d mm thick) is the rectangle %d, above ellipse %d and straight path %d (geometry)',
    (length, thickness, rectangle, ellipse, straight) => {
      expect(threadRatio(thickness, length)).toBeCloseTo(rectangle, 12);
      expect(2 * Math.hypot(1, thickness / length)).toBeCloseTo(straight, 4);
      expect(perimeterOfEllipse(length / 2, thickness / 2) / length).toBeCloseTo(ellipse, 4);
      expect(rectangle).toBeGreaterThan(ellipse);
      expect(ellipse).toBeGreaterThan(straight);
    },
  );
});

describe('planThread', () => {
  test('planThread(ratio 2.5) spends 550 cm on 220 cm, 275 of it from the bobbin (read at second hand)', () => {
    const one = planThread(quilt, { ...stitching, ratio: 2.5 });
    const scale = 2200 / one.seamLength;
    expect(one.used * scale).toBeCloseTo(5500, 9);
    expect(planThread(quilt, { ...stitching, ratio: 2.5, bobbin: one.used / 2 }).bobbins).toBe(1);
  });

  test('planThread(ratio unpicked: 1.3 + 4.1) spends 540 cm on 100 cm (read)', () => {
    expect(19.5 / 15).toBeCloseTo(1.3, 12);
    expect(62 / 15).toBeCloseTo(4.1, 1);
    const one = planThread(quilt, { ...stitching, ratio: 1.3 + 4.1 });
    expect((one.used / one.seamLength) * 100).toBeCloseTo(540, 9);
  });
});

/** By summing small chords: needs no formula that could be wrong in the same way. */
function perimeterOfEllipse(half: number, other: number): number {
  const steps = 100_000;
  const at = (index: number) => (2 * Math.PI * index) / steps;
  return Array.from({ length: steps }, (_, index) =>
    Math.hypot(
      half * (Math.cos(at(index + 1)) - Math.cos(at(index))),
      other * (Math.sin(at(index + 1)) - Math.sin(at(index))),
    ),
  ).reduce((sum, chord) => sum + chord, 0);
}
