import { describe, expect, test } from 'vitest';
import type { Swatch } from '#core/contract.ts';
import { startReading } from '#core/wish/reading.ts';
import { resolveSwatches } from '#core/wish/resolve-swatches.ts';

function read(...swatches: readonly Swatch[]) {
  const reading = startReading('in');
  const found = resolveSwatches(reading, swatches);
  return { found, faults: reading.faults, kept: reading.kept };
}
const plain = { direction: 'length', before: 10, after: '9 5/8' } as const;

describe('resolveSwatches', () => {
  test('resolveSwatches fills name and washes, and reads mixed units', () => {
    const { found } = read(plain, { ...plain, before: '25 cm', after: '240 mm' });
    expect(found[0]).toEqual({
      fabric: 'cloth',
      direction: 'length',
      before: 10,
      after: 9.625,
      washes: 1,
    });
    expect((found[1]?.after ?? 0) / (found[1]?.before ?? 1)).toBeCloseTo(0.96, 9);
  });

  test('resolveSwatches keeps both diagonals, and puts them into the query', () => {
    const { found, kept } = read({ ...plain, diagonals: { ac: 14.5, bd: '13 3/4' } });
    expect(found[0]?.diagonals).toEqual({ ac: 14.5, bd: 13.75 });
    expect(kept).toContainEqual(['swatches.0.diagonals.bd', '13.75']);
  });

  test('resolveSwatches refuses what came out more than twice or less than half as long', () => {
    const { faults } = read(
      { ...plain, after: 20.1 },
      { ...plain, after: 4.9 },
      { ...plain, diagonals: { ac: 10, bd: 21 } },
    );
    expect(faults.map(({ code, path }) => [code, path.join('.')])).toEqual([
      ['after-unlikely', 'swatches.0.after'],
      ['after-unlikely', 'swatches.1.after'],
      ['after-unlikely', 'swatches.2.diagonals.bd'],
    ]);
  });

  test('resolveSwatches refuses a length of nought before the wash, and says so once', () => {
    const { faults } = read({ ...plain, before: 0 });
    expect(faults.map(({ code, path }) => [code, path.join('.')])).toEqual([
      ['too-small', 'swatches.0.before'],
    ]);
  });
});
