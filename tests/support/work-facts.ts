import type { Step } from '#core/contract.ts';
import { orderWork } from '#core/sewing/order-work.ts';
import type { WorkFacts } from '#core/sewing/work-facts.ts';
import { deepFreeze } from './deep-freeze.ts';

/** A quilt of 6 by 8 blocks, its figures made up. */
export const WORK_FACTS: WorkFacts = deepFreeze({
  unit: 'in',
  columns: 6,
  rows: 8,
  cut: 215.9,
  seam: 25.4,
  snipDepth: 12.7,
  snipPitch: 6.35,
  clearance: 12.7,
  fabrics: ['quilting-cotton', 'flannel'],
  prewashed: [],
  isMeasured: false,
  pieces: 102,
  prints: 4,
  topLeft: 'C',
  snips: 6336,
  snipsJoined: 3630,
  minutesJoined: 90.75,
  needle: '100/16',
  chained: true,
  bobbins: [
    { step: 'quilt-second', changes: 1, after: [31] },
    { step: 'join', row: 'E', changes: 1, after: [0] },
  ],
  middle: { from: 3, to: 4 },
  borderPasses: 2,
  perimeter: 4622.8,
  mismatch: { withinFromCentre: 0.884, withinFromOneEnd: 0.733 },
  ends: {
    half: 5.4,
    most: 15.8,
    mostFromOneEnd: 22.4,
    ends: 14,
    unpick: 1.62,
    unpickFromOneEnd: 1.87,
  },
  ease: 12.7,
  wet: 3.4182,
  time: {
    cut: 40.8,
    stack: 14.4,
    quilt: 52.3,
    snip: 158.4,
    layout: 24,
    joins: 21.5,
    rows: 18.2,
    border: 9.4,
    trim: 14.4,
    total: 353.4,
  },
});

/** The steps of that quilt, changed where the test says. */
export function workSteps(change: Partial<WorkFacts> = {}): readonly Step[] {
  return orderWork({ ...WORK_FACTS, ...change });
}

/** One of those steps, where there is such a one. */
export function findStep(id: string, change: Partial<WorkFacts> = {}): Step | undefined {
  return workSteps(change).find((step) => step.id === id);
}
