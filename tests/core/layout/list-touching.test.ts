import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { countTouching } from '#core/layout/count-touching.ts';
import { listTouching } from '#core/layout/list-touching.ts';

const cells = fc.integer({ min: 1, max: 8 }).chain((columns) =>
  fc.array(
    fc.string({
      unit: fc.constantFrom('A', 'B', 'C', '.'),
      minLength: columns,
      maxLength: columns,
    }),
    { minLength: 1, maxLength: 8 },
  ),
);

describe('listTouching', () => {
  test('listTouching names both kinds of meeting by their places', () => {
    expect(listTouching(['ABA', 'CAB'])).toEqual([
      { kind: 'corner', places: [0, 4] },
      { kind: 'corner', places: [1, 5] },
      { kind: 'corner', places: [2, 4] },
    ]);
    expect(listTouching(['A', 'A'])).toEqual([{ kind: 'side', places: [0, 1] }]);
  });

  test('listTouching never meets over the end of a row', () => {
    expect(listTouching(['AB', 'CD', 'EF'])).toEqual([]);
    expect(listTouching(['BA', 'AC', 'DA'])).toEqual([
      { kind: 'corner', places: [1, 2] },
      { kind: 'corner', places: [2, 5] },
    ]);
  });

  test('listTouching of free cells, and of no cells, is empty', () => {
    expect(listTouching(['..', '..'])).toEqual([]);
    expect(listTouching([])).toEqual([]);
  });

  test('listTouching lists as many of each kind as countTouching counts, each once and each alike', () => {
    fc.assert(
      fc.property(cells, (rows) => {
        const found = listTouching(rows);
        const count = (kind: string) => found.filter((one) => one.kind === kind).length;
        expect({ sides: count('side'), corners: count('corner') }).toEqual(countTouching(rows));
        expect(new Set(found.map(({ places }) => places.join())).size).toBe(found.length);
        const letters = rows.join('');
        for (const { places } of found) expect(letters[places[0]]).toBe(letters[places[1]]);
      }),
    );
  });
});
