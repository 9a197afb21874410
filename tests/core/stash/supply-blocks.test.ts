import { describe, expect, test } from 'vitest';
import type { StashRequest } from '#core/contract.ts';
import { specifyStash } from '#core/stash/stash-spec.ts';
import { supplyBlocks } from '#core/stash/supply-blocks.ts';
import { resolveStash } from '#core/wish/resolve-stash.ts';
import { topPiece } from '../../support/stashes.ts';

const supply = (request: StashRequest, inches: number) => {
  const read = resolveStash(request);
  if (!read.ok) throw new Error('refused');
  return supplyBlocks(specifyStash(read.value.input), inches * 25.4);
};

describe('supplyBlocks', () => {
  const pieces = [
    topPiece('a', 21, 18, { print: 'Rust', count: 2 }),
    topPiece('b', 10, 10, { print: 'Rust' }),
    topPiece('c', 21, 18),
    { id: 'd', role: 'backing' as const, width: 44, length: 36 },
  ];

  test('supplyBlocks adds up pieces of one print, and roles', () => {
    // At 9 in: fat quarters 4 each, the scrap 1; flannel floor(43 / 9)·floor(36 / 9) = 16.
    expect(supply({ pieces }, 9)).toMatchObject({
      prints: [
        { id: 'Rust', squares: 9 },
        { id: 'c', squares: 4 },
      ],
      roles: [
        { role: 'top', blocks: 13 },
        { role: 'backing', blocks: 16 },
      ],
      blocks: 13,
    });
  });

  test('supplyBlocks takes two squares a block for two middle layers', () => {
    const middle = { id: 'm', role: 'middle' as const, width: 30, length: 45 };
    const layers = (['top', 'middle', 'middle', 'backing'] as const).map((role) => ({ role }));
    // floor(30 / 9)·floor(45 / 9) = 15, enough for 7 blocks.
    expect(supply({ pieces: [...pieces, middle], layers }, 9)).toMatchObject({ blocks: 7 });
  });

  test('supplyBlocks leaves out a role without pieces: it limits nothing', () => {
    expect(supply({ pieces: pieces.slice(0, 3) }, 9)).toMatchObject({
      roles: [{ role: 'top', blocks: 13 }],
      blocks: 13,
    });
  });
});
