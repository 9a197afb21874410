/**
 * Layouts that are known to exist because one was laid before only its counts were kept: 2,000 of them
 * up to 30×30, of which a share is tight (four prints with corners counted, with or without a few of a
 * fifth; five prints alike). A layout free of touching is to be found for every one.
 */
import { describe, expect, inject, test } from 'vitest';
import { solveLayout } from '#core/layout/solve-layout.ts';
import { startRandom } from '#core/layout/start-random.ts';
import { countTouch } from '../support/boards.ts';
import { tallyPrints } from '../support/layouts.ts';
import { PLANTINGS } from '../support/planted-layouts.ts';

const EACH = 250;
const EFFORT = { begin: 200_000, repair: 900_000, spread: 0, search: 120_000 };

describe('solveLayout', () => {
  test.each(PLANTINGS)(
    `solveLayout of ${EACH} planted layouts touches nowhere: $name`,
    { timeout: 60_000 },
    ({ plant }) => {
      const draw = startRandom(inject('seed'));
      for (let turn = 0; turn < EACH; turn += 1) {
        const task = plant(draw);
        const { cells, fewest } = solveLayout(task, EFFORT);
        expect([turn, task, countTouch(cells, task.touch), fewest]).toEqual([turn, task, 0, 0]);
        expect(tallyPrints(cells, task.counts.length)).toEqual(task.counts);
      }
    },
  );

  test('the planted layouts are 2,000, and three in eight of them tight', () => {
    const tight = PLANTINGS.filter(({ isTight }) => isTight).length;
    console.log(`${PLANTINGS.length * EACH} planted layouts, ${tight * EACH} of them tight.`);
    expect(PLANTINGS.length * EACH).toBe(2000);
    expect(tight / PLANTINGS.length).toBe(3 / 8);
  });
});
