import { describe, expect, test } from 'vitest';
import { orderJoins } from '#core/sewing/order-joins.ts';
import { findStep, WORK_FACTS } from '../../support/work-facts.ts';

describe('orderJoins', () => {
  test('orderJoins lays out, joins rows, joins row to row; of a lone block nothing', () => {
    const idsOf = (columns: number, rows: number) =>
      orderJoins({ ...WORK_FACTS, columns, rows }).map(({ id }) => id);
    expect(idsOf(6, 8)).toEqual(['layout', 'join', 'join-rows']);
    expect(idsOf(1, 8)).toEqual(['layout', 'join-rows']);
    expect(idsOf(6, 1)).toEqual(['layout', 'join']);
    expect(idsOf(1, 1)).toEqual([]);
  });

  test('orderJoins marks the block at the top left, by its print where there are several', () => {
    expect(findStep('layout')?.detail).toContain('top-left block, of print C, with a pin');
    expect(findStep('layout', { prints: 1 })?.detail).toContain('top-left block with a pin');
  });

  test('orderJoins sews a row as one chain, and tells of the bobbin that runs out before row E', () => {
    const { detail = '', figures } = findStep('join') ?? {};
    expect(detail).toContain('one chain of 5 seams');
    expect(detail).toContain('runs out at the start of row E');
    expect(figures).toEqual({ rows: 8, columns: 6, joins: 5, seam: 1, bobbins: 1 });
    expect(findStep('join', { chained: false })?.detail).not.toContain('chain');
  });

  test('orderJoins finds the middle: between blocks 3 and 4 of six, at block 4 of seven', () => {
    expect(findStep('join-rows')?.detail).toContain('between blocks 3 and 4');
    const middle = { from: 4, to: 4 };
    expect(findStep('join-rows', { columns: 7, middle })?.detail).toContain('at block 4');
  });

  test('orderJoins tells what to expect of row ends, what washes out and what to unpick', () => {
    const { detail = '', figures } = findStep('join-rows') ?? {};
    // 5.4 mm is 3.4 sixteenths of an inch, 15.8 is 9.95, 22.4 is 14.1: rounded up to 4, 10 and 15.
    expect(detail).toContain(
      'Half of the ends miss by less than 1/4 in, 95 in 100 by less than 5/8 in',
    );
    expect(detail).toContain('joined from one end it would be 15/16 in');
    expect(detail).toContain('within 1/2 in about 88 times in 100');
    expect(detail).toContain('Unpick what is farther off, about 2 of the 14 ends');
    expect(figures).toMatchObject({
      from: 3,
      to: 4,
      ease: 0.5,
      within: 88.4,
      ends: 14,
      unpick: 1.62,
    });
  });

  test('orderJoins promises nothing of row ends where no ease is allowed', () => {
    const none = findStep('join-rows', { ease: 0 });
    expect(none?.detail).not.toContain('washes out');
    expect(none?.detail).toContain('Unpick what does not meet');
  });

  test('orderJoins says nearly always where it is, and of nobody who is exact that they miss', () => {
    const mismatch = { withinFromCentre: 0.996, withinFromOneEnd: 0.95 };
    expect(findStep('join-rows', { mismatch })?.detail).toContain('nearly always');
    const ends = { ...WORK_FACTS.ends, half: 0, most: 0, mostFromOneEnd: 0, unpick: 0 };
    const exact = findStep('join-rows', { mismatch, ends })?.detail ?? '';
    expect(exact).not.toContain('miss by');
    expect(exact).toMatch(/farther off\.$/);
  });

  test('orderJoins speaks of one row as one', () => {
    expect(findStep('join', { columns: 5, rows: 1 })?.do).toContain('1 row of 5');
  });
});
