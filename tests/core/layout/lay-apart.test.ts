import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import type { Touch } from '#core/contract.ts';
import { canLay } from '#core/layout/can-lay.ts';
import { countTouching } from '#core/layout/count-touching.ts';
import { layApart } from '#core/layout/lay-apart.ts';
import { tallyPrints } from '../../support/layouts.ts';

const side = fc.integer({ min: 1, max: 7 });
const supplies = fc.array(fc.integer({ min: 0, max: 24 }), { minLength: 1, maxLength: 8 });
const touches = fc.constantFrom<Touch | undefined>('sides', 'corners', undefined);

/** Whether any filling of a small grid keeps like prints apart, by trying all. */
function canAny(columns: number, rows: number, supply: readonly number[], touch: Touch): boolean {
  const left = [...supply];
  const laid: number[] = [];
  const meets = (print: number) => {
    const place = laid.length;
    const beside = place % columns === 0 ? -1 : laid[place - 1];
    const right = (place + 1) % columns === 0 ? -1 : laid[place - columns + 1];
    const before = place % columns === 0 ? -1 : laid[place - columns - 1];
    const corners = touch === 'corners' ? [right, before] : [];
    return [beside, laid[place - columns], ...corners].includes(print);
  };
  const go = (): boolean =>
    laid.length === columns * rows ||
    left.some((count, print) => {
      if (count === 0 || meets(print)) return false;
      left[print] = count - 1;
      laid.push(print);
      const isDone = go();
      laid.pop();
      left[print] = count;
      return isDone;
    });
  return go();
}

describe('layApart', () => {
  test('layApart keeps what it promises: enough blocks, none touching', () => {
    fc.assert(
      fc.property(side, side, supplies, touches, (columns, rows, supply, touch) => {
        const cells = layApart({ columns, rows }, supply, touch);
        if (cells === undefined) {
          const all = supply.reduce((sum, blocks) => sum + blocks, 0);
          if (touch === undefined) expect(all).toBeLessThan(columns * rows);
          return;
        }
        expect(cells.map((row) => row.length)).toEqual(Array(rows).fill(columns));
        for (const [print, used] of tallyPrints(cells, supply.length).entries()) {
          expect(used).toBeLessThanOrEqual(supply[print] ?? 0);
        }
        const { sides, corners } = countTouching(cells);
        if (touch !== undefined) expect(touch === 'sides' ? sides : sides + corners).toBe(0);
      }),
      { numRuns: 300 },
    );
  });

  test('layApart finds a filling wherever trying all of them does, on grids of 12 cells at most', () => {
    const small = fc.integer({ min: 1, max: 4 });
    const few = fc.array(fc.integer({ min: 0, max: 6 }), { minLength: 2, maxLength: 6 });
    const strict = fc.constantFrom<Touch>('sides', 'corners');
    let tried = 0;
    fc.assert(
      fc.property(small, small, few, strict, (columns, rows, supply, touch) => {
        fc.pre(columns * rows <= 12);
        const found = layApart({ columns, rows }, supply, touch) !== undefined;
        expect(found).toBe(canAny(columns, rows, supply, touch));
        tried += Number(found);
      }),
      { numRuns: 600 },
    );
    expect(tried).toBeGreaterThan(100);
  });

  test('layApart never contradicts what speaks against a filling', () => {
    fc.assert(
      fc.property(side, side, supplies, (columns, rows, supply) => {
        for (const touch of ['sides', 'corners'] as const) {
          if (canLay({ columns, rows }, supply, touch)) continue;
          expect(layApart({ columns, rows }, supply, touch)).toBeUndefined();
        }
      }),
    );
  });

  test('layApart lays the tight cases of five equal prints on 5×5 and four on 6×8', () => {
    expect(layApart({ columns: 5, rows: 5 }, [5, 5, 5, 5, 5], 'corners')).toBeDefined();
    expect(layApart({ columns: 6, rows: 8 }, [12, 12, 12, 12], 'corners')).toBeDefined();
    expect(layApart({ columns: 6, rows: 8 }, [12, 12, 12, 11], 'corners')).toBeUndefined();
  });
});
