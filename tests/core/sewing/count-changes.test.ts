import { expect, test } from 'vitest';
import { countChanges } from '#core/sewing/count-changes.ts';

test('countChanges counts those of one step alone, over all its rows', () => {
  const bobbins = [
    { step: 'join', row: 'A', changes: 2, after: [1, 3] },
    { step: 'join', row: 'C', changes: 1, after: [0] },
    { step: 'border', changes: 5, after: [4] },
  ] as const;
  expect(countChanges(bobbins, 'join')).toBe(3);
  expect(countChanges(bobbins, 'quilt-first')).toBe(0);
});
