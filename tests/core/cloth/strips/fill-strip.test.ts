import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { fillStrip } from '#core/cloth/strips/fill-strip.ts';

const choice = fc
  .array(
    fc.record({
      width: fc.integer({ min: 3, max: 40 }),
      worth: fc.integer({ min: 0, max: 50 }),
      most: fc.integer({ min: 0, max: 6 }),
    }),
    { minLength: 1, maxLength: 6 },
  )
  .map((items) => ({
    widths: items.map(({ width }) => width),
    worth: items.map(({ worth }) => worth),
    most: items.map(({ most }) => most),
  }));

/** The textbook table over whole widths. */
function byTable(room: number, { widths, worth, most }: Parameters<typeof fillStrip>[1]): number {
  let best = Array.from({ length: room + 1 }, () => 0);
  for (const [kind, width] of widths.entries()) {
    for (let copy = 0; copy < (most[kind] ?? 0); copy += 1) {
      const before = best;
      best = before.map((value, space) =>
        space < width ? value : Math.max(value, (before[space - width] ?? 0) + (worth[kind] ?? 0)),
      );
    }
  }
  return best[room] ?? 0;
}

describe('fillStrip', () => {
  test('fillStrip finds what dynamic programming finds, in the room and the numbers there are', () => {
    fc.assert(
      fc.property(fc.integer({ min: 10, max: 100 }), choice, (room, items) => {
        const filling = fillStrip(room, items, { budget: { steps: 1e6 }, least: 0 });
        const counts = items.widths.map((_, kind) => filling.counts[kind] ?? 0);
        const sum = (values: readonly number[]) =>
          counts.reduce((total, count, kind) => total + count * (values[kind] ?? 0), 0);
        expect(filling.worth).toBe(byTable(room, items));
        expect(filling.ceiling).toBe(filling.worth);
        expect(sum(items.worth)).toBe(filling.worth);
        expect(sum(items.widths)).toBeLessThanOrEqual(room);
        expect(counts.every((count, kind) => count <= (items.most[kind] ?? 0))).toBe(true);
      }),
    );
  });

  test('fillStrip finds nothing where nothing is worth more than asked', () => {
    const items = { widths: [10], worth: [5], most: [3] };
    expect(fillStrip(30, items, { budget: { steps: 100 }, least: 15 }).counts).toEqual([]);
    expect(fillStrip(30, items, { budget: { steps: 100 }, least: 14 }).counts).toEqual([3]);
  });

  test('fillStrip out of steps still gives a ceiling that no filling exceeds', () => {
    fc.assert(
      fc.property(fc.integer({ min: 10, max: 100 }), choice, (room, items) => {
        const filling = fillStrip(room, items, { budget: { steps: 3 }, least: 0 });
        expect(filling.ceiling).toBeGreaterThanOrEqual(byTable(room, items) - 1e-9);
      }),
    );
  });
});
