import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import type { StashOption, StashPiece } from '#core/contract.ts';
import { answerStash, topPiece } from '../support/stashes.ts';

const quarters = (count: number, own: Partial<StashPiece> = {}) =>
  Array.from({ length: count }, (_, at) => topPiece(`q${at}`, 21, 18, own));
const flannel: StashPiece = { id: 'flannel', role: 'backing', width: 44, length: 90 };
const blocksOf = (option: StashOption | undefined, role: string) =>
  option?.uses.reduce((sum, use) => sum + (use.role === role ? use.blocks : 0), 0);

describe('planStash', () => {
  test('planStash of ten fat quarters at 9 in: by hand 40 squares, 36 of them in 6 by 6', () => {
    const { options, supply } = answerStash({
      pieces: [...quarters(10), flannel],
      block: { cut: 9 },
    });
    // Flannel: floor(43 / 9)·floor(90 / 9) = 40. Sewn 6·7 + 2 = 44 in.
    expect(supply).toEqual([
      {
        cut: 9,
        roles: [
          { role: 'top', blocks: 40 },
          { role: 'backing', blocks: 40 },
        ],
      },
    ]);
    expect(options[0]).toMatchObject({
      cut: 9,
      columns: 6,
      rows: 6,
      blocks: 36,
      sewn: { width: 44, height: 44 },
      limitedBy: ['top', 'backing'],
      buy: [],
    });
    expect(blocksOf(options[0], 'top')).toBe(36);
    expect(blocksOf(options[0], 'backing')).toBe(36);
    // Nine rows of four squares from the flannel: 7 in of width and the last row's end are left.
    const rest = options[0]?.left.find(({ id }) => id === 'flannel')?.rectangles;
    expect(rest).toEqual([
      { width: 7, length: 90, count: 1 },
      { width: 9, length: 36, count: 1 },
    ]);
  });

  test('planStash without a backing tells what is to be bought', () => {
    const { options, assumptions } = answerStash({ pieces: quarters(10), block: { cut: 9 } });
    expect(options[0]?.buy).toEqual([{ role: 'backing', blocks: 36 }]);
    expect(assumptions).toContainEqual(
      expect.objectContaining({ path: 'pieces', value: 'backing' }),
    );
  });

  test('planStash says how far a plan is from the size to stop at', () => {
    const target = { width: 44, height: 44, at: 'sewn' as const };
    const pieces = [...quarters(10), flannel];
    const { options } = answerStash({ pieces, block: { cut: 9 }, shape: { target } });
    expect(options[0]).toMatchObject({
      blocks: 36,
      fit: { width: 0, height: 0 },
      limitedBy: ['target'],
    });
  });

  test('planStash proves each plan by an arrangement that uses what is cut', () => {
    const touch = fc.constantFrom('sides' as const, 'corners' as const);
    const piece = fc.tuple(
      fc.integer({ min: 6, max: 44 }),
      fc.integer({ min: 6, max: 60 }),
      fc.constantFrom('a', 'b', 'c', 'd', 'e', 'f'),
    );
    let offered = 0;
    fc.assert(
      fc.property(fc.array(piece, { minLength: 1, maxLength: 9 }), touch, (rows, own) => {
        const pieces = rows.map(([width, length, print], at) =>
          topPiece(`p${at}`, width, length, { print }),
        );
        const { options } = answerStash({ pieces, touch: own, cuts: [6, 8, 10, 12] });
        for (const { layout, uses, blocks, columns, rows: down } of options) {
          offered += 1;
          expect(layout.touching.sides).toBe(0);
          if (own === 'corners') expect(layout.touching.corners).toBe(0);
          expect(layout.cells.map((row) => row.length)).toEqual(Array(down).fill(columns));
          for (const [at, print] of layout.prints.entries()) {
            const letter = String.fromCharCode(65 + at);
            const laid = layout.cells.join('').split(letter).length - 1;
            const ids = pieces.filter((one) => one.print === print).map(({ id }) => id);
            const cut = uses
              .filter(({ id }) => ids.includes(id))
              .reduce((sum, use) => sum + use.blocks, 0);
            expect(cut).toBe(laid);
          }
          expect(uses.reduce((sum, use) => sum + use.blocks, 0)).toBe(blocks);
        }
      }),
      { numRuns: 60 },
    );
    expect(offered).toBeGreaterThan(60);
  });

  test('planStash: a piece more or a longer one never makes the largest plan smaller', () => {
    const piece = fc.tuple(fc.integer({ min: 6, max: 44 }), fc.integer({ min: 6, max: 60 }));
    const largest = (rows: readonly (readonly [number, number])[]) => {
      const pieces = rows.map(([width, length], at) => topPiece(`p${at}`, width, length));
      const washed = answerStash({ pieces, cuts: [6, 8, 10, 12] }).options[0]?.washed;
      return washed === undefined ? 0 : washed.width * washed.height;
    };
    fc.assert(
      fc.property(fc.array(piece, { minLength: 1, maxLength: 6 }), piece, (rows, more) => {
        const before = largest(rows);
        expect(largest([...rows, more])).toBeGreaterThanOrEqual(before - 0.01);
        const [first = [6, 6], ...others] = rows;
        const longer: readonly [number, number] = [first[0], (first[1] ?? 0) + 10];
        expect(largest([longer, ...others])).toBeGreaterThanOrEqual(before - 0.01);
      }),
      { numRuns: 60 },
    );
  });

  test('planStash warns of a cot, and of shrink that nobody measured', () => {
    const codes = (pieces: readonly StashPiece[]) =>
      answerStash({ pieces }).cautions.map(({ code, severity }) => `${code} ${severity}`);
    expect(codes(quarters(3))).toEqual([
      'infant-sleep danger',
      'rotary-cutter care',
      'unmeasured-shrink care',
    ]);
    expect(codes(quarters(24, { count: 4 }))[0]).toBe('infant-sleep note');
  });

  test('planStash of pieces too small offers nothing and says why', () => {
    const made = answerStash({ pieces: [topPiece('a', 5, 5)] });
    expect(made).toMatchObject({ options: [], limitedBy: ['top'] });
  });
});
