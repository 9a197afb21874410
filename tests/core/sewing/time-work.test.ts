import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { timeWork, type Work } from '#core/sewing/time-work.ts';
import { deepFreeze } from '../../support/deep-freeze.ts';

const work: Work = deepFreeze({
  grid: { columns: 3, rows: 2 },
  pieces: 14,
  seams: { quilting: 2000, joins: 480, rows: 320, border: 2000 },
  snips: 456,
  borderPasses: 2,
});
const PACES = ['cutPiece', 'stackBlock', 'sewMetre', 'handleSeam', 'snip', 'layBlock', 'trimBlock'];
const NONE = Object.fromEntries(PACES.map((name) => [name, 0]));

/** Minutes with one pace of one minute and the others of none: what is counted by that pace. */
function countBy(pace: string) {
  const paces = { ...NONE, [pace]: 1 } as unknown as Parameters<typeof timeWork>[1];
  return timeWork(work, paces);
}

describe('timeWork', () => {
  test('timeWork counts 14 pieces, 6 blocks to stack, lay and trim, and 456 snips', () => {
    expect(countBy('cutPiece')).toMatchObject({ cut: 14, total: 14 });
    expect(countBy('stackBlock')).toMatchObject({ stack: 6, total: 6 });
    expect(countBy('layBlock')).toMatchObject({ layout: 6, total: 6 });
    expect(countBy('trimBlock')).toMatchObject({ trim: 6, total: 6 });
    expect(countBy('snip')).toMatchObject({ snip: 456, total: 456 });
  });

  test('timeWork sews metres: 2, 0.48, 0.32 and 2', () => {
    const sewn = countBy('sewMetre');
    expect(sewn).toMatchObject({ quilt: 2, joins: 0.48, rows: 0.32, border: 2 });
    expect(sewn.total).toBeCloseTo(4.8, 12);
  });

  test('timeWork handles each seam of each block: 12 diagonals, 4 joins, 3 of the row, 8 of the border', () => {
    expect(countBy('handleSeam')).toMatchObject({ quilt: 12, joins: 4, rows: 3, border: 8 });
  });

  test('timeWork does not lay out a lone block', () => {
    const lone = { ...work, grid: { columns: 1, rows: 1 } };
    const paces = { ...NONE, layBlock: 1 } as unknown as Parameters<typeof timeWork>[1];
    expect(timeWork(lone, paces).layout).toBe(0);
  });

  test('timeWork totals its stages', () => {
    const pace = fc.double({ min: 0, max: 120, noNaN: true });
    const paces = fc.record({
      cutPiece: pace,
      stackBlock: pace,
      sewMetre: pace,
      handleSeam: pace,
      snip: pace,
      layBlock: pace,
      trimBlock: pace,
    });
    fc.assert(
      fc.property(paces, (given) => {
        const { total, ...stages } = timeWork(work, deepFreeze(given));
        const sum = Object.values(stages).reduce((all, minutes) => all + minutes, 0);
        expect(total).toBeCloseTo(sum, 6);
      }),
    );
  });
});
