import { expect, test } from 'vitest';
import { readGroups, readKind } from '#core/drawing/read-strips.ts';

test('readKind gives letters by place and sides as they are read', () => {
  expect(readKind({ width: 8.5, length: 10, unit: 'in', place: 1 })).toEqual({
    letter: 'B',
    sides: '8½ × 10',
    width: 215.9,
    length: 254,
  });
});

test('readGroups gives millimetres, and leaves pieces of no known kind out', () => {
  const kind = readKind({ width: 10, length: 10, unit: 'cm', place: 0 });
  const pieces = [
    { id: 'block', count: 3, turned: false },
    { id: 'other', count: 1, turned: true },
  ];
  const groups = readGroups(
    [{ count: 2, length: 10, pieces, left: 1 }],
    new Map([['block', kind]]),
    'cm',
  );
  expect(groups).toEqual([
    { count: 2, length: 100, reads: '10 cm', pieces: [{ kind, count: 3, turned: false }] },
  ]);
});
