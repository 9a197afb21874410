import { expect, test } from 'vitest';
import { nameRow } from '#core/layout/name-row.ts';

test('nameRow goes through the alphabet and then through its pairs, as spreadsheets name columns', () => {
  expect([0, 25, 26, 51, 52, 99].map(nameRow)).toEqual(['A', 'Z', 'AA', 'AZ', 'BA', 'CV']);
});

test('nameRow names each of a hundred rows by itself', () => {
  expect(new Set(Array.from({ length: 100 }, (_, index) => nameRow(index))).size).toBe(100);
});
