import { describe, expect, test } from 'vitest';
import { findRow, tell } from '../../support/tell-answer.ts';

describe('tellStash', () => {
  test('tells each quilt, what it takes and what is to be bought', () => {
    // Six pieces of 21 1/2 by 18 in give one 12 in square each.
    const told = tell(
      'stash',
      'cuts.0=12&pieces.0.id=Oat&pieces.0.role=top&pieces.0.width=21.5&pieces.0.length=18&pieces.0.count=6',
    );
    expect(told.title).toMatch(/^\d+ quilts? that this cloth makes$/);
    expect(findRow(told, 'Oat, top')).toBe('6 squares');
    expect(findRow(told, 'To buy, backing')).toBe('6 squares');
    expect(findRow(told, 'What keeps it from being larger')).toContain('top');
  });
  test('says so where there is no quilt', () => {
    const piece = 'pieces.0.id=Oat&pieces.0.role=top&pieces.0.width=3&pieces.0.length=3';
    expect(tell('stash', `cuts.0=12&${piece}`).title).toBe('This cloth makes no quilt yet');
  });
});
