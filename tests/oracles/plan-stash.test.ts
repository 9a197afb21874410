/**
 * The largest plan of a small stash against trying everything: every grid, and for each grid every way
 * to fill it print by print, cell by cell. Nothing of the core but its answer stands in it.
 */
import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import type { Touch } from '#core/contract.ts';
import { answerStash } from '../support/stashes.ts';

interface Small {
  /** In inches; the print is a letter. */
  readonly pieces: readonly {
    readonly width: number;
    readonly length: number;
    readonly print: string;
  }[];
  readonly backing: number;
  readonly touch: Touch | undefined;
}

const CUT = 8;
const SEAM = 1;
/** Washing takes the same part of both sides while the grain alternates, so ratios are those sewn. */
const RATIO = 0.8;

const smalls: fc.Arbitrary<Small> = fc.record({
  pieces: fc.array(
    fc.record({
      width: fc.integer({ min: 6, max: 30 }),
      length: fc.integer({ min: 6, max: 26 }),
      print: fc.constantFrom('a', 'b', 'c', 'd', 'e'),
    }),
    { minLength: 1, maxLength: 6 },
  ),
  backing: fc.integer({ min: 20, max: 70 }),
  touch: fc.constantFrom<Touch | undefined>('sides', 'corners', undefined),
});

function canFill(columns: number, rows: number, supply: readonly number[], touch?: Touch): boolean {
  const left = [...supply];
  const laid: number[] = [];
  const meets = (print: number) => {
    const place = laid.length;
    const isFirst = place % columns === 0;
    const isLast = (place + 1) % columns === 0;
    if (touch === undefined) return false;
    if (laid[place - columns] === print || (!isFirst && laid[place - 1] === print)) return true;
    if (touch === 'sides') return false;
    return (
      (!isFirst && laid[place - columns - 1] === print) ||
      (!isLast && laid[place - columns + 1] === print)
    );
  };
  const go = (): boolean => {
    if (laid.length === columns * rows) return true;
    for (const [print, count] of left.entries()) {
      if (count === 0 || meets(print)) continue;
      left[print] = count - 1;
      laid.push(print);
      const isDone = go();
      laid.pop();
      left[print] = count;
      if (isDone) return true;
    }
    return false;
  };
  return go();
}

/** Blocks of the largest grid of the shape that can be filled, 0 where there is none. */
function findLargest({ pieces, backing, touch }: Small): number {
  const squares = (width: number, length: number) =>
    Math.floor(width / CUT) * Math.floor(length / CUT);
  const prints = [...new Set(pieces.map(({ print }) => print))];
  const supply = prints.map((id) =>
    pieces.reduce((sum, one) => sum + (one.print === id ? squares(one.width, one.length) : 0), 0),
  );
  const most = Math.min(
    supply.reduce((sum, count) => sum + count, 0),
    squares(40, backing),
  );
  let largest = 0;
  for (let columns = 1; columns <= most; columns += 1) {
    for (let rows = 1; columns * rows <= most; rows += 1) {
      const side = (count: number) => count * (CUT - 2 * SEAM) + 2 * SEAM;
      const ratio = side(columns) / side(rows) / RATIO;
      if (Math.max(ratio, 1 / ratio) > 1.25 + 1e-9 || columns * rows < 4) continue;
      if (columns * rows > largest && canFill(columns, rows, supply, touch))
        largest = columns * rows;
    }
  }
  return largest;
}

describe('planStash beside trying everything', () => {
  test('planStash offers the largest plan there is, of small stashes', () => {
    let offered = 0;
    fc.assert(
      fc.property(smalls, (small) => {
        const { pieces, backing, touch } = small;
        const { options } = answerStash({
          pieces: [
            ...pieces.map((piece, at) => ({ ...piece, id: `p${at}`, role: 'top' as const })),
            { id: 'backing', role: 'backing', width: 40, length: backing },
          ],
          block: { cut: CUT, seam: SEAM },
          ...(touch !== undefined && { touch }),
        });
        const largest = findLargest(small);
        offered += Number(largest > 0);
        expect(options[0]?.blocks ?? 0).toBe(largest);
      }),
      { numRuns: 300 },
    );
    expect(offered).toBeGreaterThan(100);
  });
});
