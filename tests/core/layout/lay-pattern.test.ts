import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { layPattern } from '#core/layout/lay-pattern.ts';
import { anyTask, countTouch, keepsPins } from '../../support/boards.ts';
import { tallyPrints } from '../../support/layouts.ts';

const task = (columns: number, rows: number, counts: readonly number[]) => ({
  ...{ grid: { columns, rows }, counts, touch: 'sides' as const, seed: 0 },
});

describe('layPattern', () => {
  test('layPattern meets counts and pins whatever they are', () => {
    const patterns = fc.constantFrom(
      'checkerboard' as const,
      'diagonal' as const,
      'rings' as const,
    );
    fc.assert(
      fc.property(anyTask(), patterns, (any, pattern) => {
        const cells = layPattern(any, pattern);
        expect(tallyPrints(cells, any.counts.length)).toEqual(any.counts);
        expect(keepsPins(cells, any.fixed)).toBe(true);
      }),
    );
  });

  test('layPattern(checkerboard) of two prints alike is a chessboard', () => {
    expect(layPattern(task(4, 3, [6, 6]), 'checkerboard')).toEqual(['ABAB', 'BABA', 'ABAB']);
  });

  test('layPattern(checkerboard) lays the darker prints on one colour and the lighter on the other', () => {
    const cells = layPattern(task(6, 6, [9, 9, 9, 9]), 'checkerboard', [80, 10, 90, 20]);
    for (const [row, line] of cells.entries()) {
      for (const [column, letter] of [...line].entries()) {
        expect('BD'.includes(letter)).toBe((row + column) % 2 === 0);
      }
    }
  });

  test('layPattern(diagonal) of five prints alike runs in bands, steeper where corners count', () => {
    expect(layPattern(task(5, 5, [5, 5, 5, 5, 5]), 'diagonal')).toEqual([
      'ABCDE',
      'BCDEA',
      'CDEAB',
      'DEABC',
      'EABCD',
    ]);
    const steep = layPattern({ ...task(5, 5, [5, 5, 5, 5, 5]), touch: 'corners' }, 'diagonal');
    expect(steep).toEqual(['ABCDE', 'CDEAB', 'EABCD', 'BCDEA', 'DEABC']);
    expect(countTouch(steep, 'corners')).toBe(0);
  });

  test('layPattern(rings) lays rounds about the middle, each of one print where the counts allow', () => {
    // 5×5 has rounds of 4, 8, 8, 4 and 1 cells from the outside in.
    const rounds = ['ABCBA', 'BCACB', 'CAAAC', 'BCACB', 'ABCBA'];
    expect(layPattern(task(5, 5, [9, 8, 8]), 'rings')).toEqual(rounds);
  });

  test('layPattern begins with another print for another seed', () => {
    const first = layPattern(task(6, 6, [12, 12, 12]), 'diagonal')[0];
    expect(layPattern({ ...task(6, 6, [12, 12, 12]), seed: 1 }, 'diagonal')[0]).not.toBe(first);
  });
});
