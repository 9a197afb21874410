import { describe, expect, test } from 'vitest';
import { findRow, tell } from '../../support/tell-answer.ts';

describe('tellLayout', () => {
  test('tells prints by letter, every row from the top, and what touches', () => {
    const told = tell('layout', 'columns=2&rows=2&prints.0.id=Heron&prints.1.id=Oat');
    expect(told.title).toBe('Layout of 2 by 2 blocks in 2 prints');
    // Two prints on four blocks touch by no side only as a checkerboard.
    expect(told.tables[0]?.rows).toEqual([
      ['Print A', 'Heron, 2 blocks'],
      ['Print B', 'Oat, 2 blocks'],
    ]);
    // Rows have letters too, so that each says which it is.
    expect(told.tables[1]?.rows.map(([name]) => name)).toEqual(['Row A', 'Row B']);
    expect(told.tables[1]?.rows.map(([, row]) => row).toSorted()).toEqual(['A B', 'B A']);
    expect(findRow(told, 'Sharing a side')).toBe('0');
    expect(told.image).toMatch(/^\/v1\/layout\.svg\?columns=2&rows=2/);
  });
});
