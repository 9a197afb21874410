/**
 * What fits a length too short, against every set of pieces by brute force: each set's least length
 * from `leastStrips`, itself checked against HiGHS; one size against counting strips of both ways.
 */
import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { fitPieces } from '#core/cloth/strips/fit-pieces.ts';
import { leastStrips } from '#core/cloth/strips/least-strips.ts';
import { FAMILIES, type StripCase, stripCases } from '../support/strip-cases.ts';

const areaOf = ({ kinds }: StripCase, placed: readonly number[]) =>
  kinds.reduce((sum, kind, at) => sum + kind.across * kind.along * (placed[at] ?? 0), 0);

function lengthFor({ kinds, usable }: StripCase, placed: readonly number[]): number {
  const wanted = kinds
    .map((kind, at) => ({ ...kind, count: placed[at] ?? 0 }))
    .filter(({ count }) => count > 0);
  return wanted.length === 0 ? 0 : leastStrips(wanted, usable).length;
}

/** Every number of each kind up to what is wanted. */
function listSets(counts: readonly number[]): readonly (readonly number[])[] {
  return counts.reduce<readonly (readonly number[])[]>(
    (sets, count) =>
      sets.flatMap((set) => Array.from({ length: count + 1 }, (_, own) => [...set, own])),
    [[]],
  );
}

describe('fitPieces', () => {
  test('fitPieces of one size is the most whose least length fits, for any room', () => {
    const cases = stripCases(FAMILIES['half inches'], { min: 1, max: 1 });
    fc.assert(
      fc.property(cases, fc.integer({ min: 1, max: 300 }), ({ kinds, usable }, halves) => {
        const room = halves * 12.7;
        const [placed = 0] = fitPieces(kinds, { usable, room });
        expect(lengthFor({ kinds, usable }, [placed])).toBeLessThanOrEqual(room + 1e-3);
        if (placed === kinds[0]?.count) return;
        expect(lengthFor({ kinds, usable }, [placed + 1])).toBeGreaterThan(room + 1e-4);
      }),
    );
  });

  test('fitPieces of two or three sizes can be cut, and is mostly the most cloth there can be', () => {
    let best = 0;
    const runs = 60;
    const small = stripCases(FAMILIES.centimetres, { min: 2, max: 3 }).map(({ kinds, usable }) => ({
      usable,
      kinds: kinds.map((kind) => ({ ...kind, count: 1 + (kind.count % 4) })),
    }));
    fc.assert(
      fc.property(small, fc.integer({ min: 20, max: 90 }), (one, percent) => {
        const counts = one.kinds.map(({ count }) => count);
        const room = Math.floor((lengthFor(one, counts) * percent) / 100);
        const placed = fitPieces(one.kinds, { usable: one.usable, room });
        expect(placed.every((count, at) => count <= (counts[at] ?? 0))).toBe(true);
        expect(lengthFor(one, placed)).toBeLessThanOrEqual(room + 1e-3);
        const most = listSets(counts)
          .filter((set) => areaOf(one, set) > areaOf(one, placed) + 1e-6)
          .some((set) => lengthFor(one, set) <= room + 1e-6);
        if (!most) best += 1;
      }),
      { numRuns: runs },
    );
    expect(best).toBeGreaterThanOrEqual(0.9 * runs);
  });
});
