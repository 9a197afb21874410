import { describe, expect, test } from 'vitest';
import type { Deed } from '../../../../client/elements/layout/layout-state.ts';
import { sayDeed } from '../../../../client/elements/layout/say-deed.ts';
import { en } from '../../../../client/text/layout/en.ts';

const say = (deed: Deed, pairs = 0) => sayDeed(en, deed, { columns: 5, pairs });

describe('sayDeed', () => {
  test('sayDeed names blocks by the letter of their row and the number of their column', () => {
    expect(say({ kind: 'pinned', place: 0 })).toContain('A1');
    expect(say({ kind: 'unpinned', place: 13 })).toContain('C4');
    expect(say({ kind: 'taken', place: 26 * 5 })).toContain('AA1');
  });

  test('sayDeed tells of a swap both blocks and what touches since', () => {
    const said = say({ kind: 'swapped', place: 4, other: 5 }, 3);
    expect(said).toMatch(/A5.*B1.*3/);
    expect(say({ kind: 'swapped', place: 4, other: 5 })).toContain(en.pairs(0));
  });

  test('sayDeed has a sentence of its own for each deed', () => {
    const kinds = ['taken', 'let-go', 'pinned', 'unpinned', 'stuck'] as const;
    expect(new Set(kinds.map((kind) => say({ kind, place: 2 }))).size).toBe(kinds.length);
  });
});
