import { describe, expect, test } from 'vitest';
import type { StashRequest } from '#core/contract.ts';
import { resolveStash } from '#core/wish/resolve-stash.ts';
import { topPiece } from '../../support/stashes.ts';

const faultsOf = (own: Partial<StashRequest>) => {
  const resolved = resolveStash({ pieces: [topPiece('a', 21, 18)], ...own });
  return resolved.ok ? [] : resolved.faults;
};

describe('checkStash', () => {
  test('checkStash wants a piece for the top', () => {
    const pieces = [{ id: 'a', role: 'backing' as const, width: 44, length: 60 }];
    expect(faultsOf({ pieces })).toEqual([
      {
        code: 'layers-unfit',
        path: ['pieces'],
        expected: 'pieces for the top',
        received: 'backing',
      },
    ]);
  });

  test('checkStash refuses a piece for a layer that is not there', () => {
    const pieces = [topPiece('a', 21, 18), { ...topPiece('b', 21, 18), role: 'middle' as const }];
    const layers = [{ role: 'top' as const }, { role: 'backing' as const }];
    expect(faultsOf({ pieces, layers })).toEqual([
      {
        code: 'not-one-of',
        path: ['pieces', 1, 'role'],
        expected: ['top', 'backing'],
        received: 'middle',
      },
    ]);
  });

  test('checkStash takes as many prints as there are letters', () => {
    const many = (count: number) =>
      Array.from({ length: count }, (_, at) => topPiece(`p${at}`, 21, 18));
    expect(faultsOf({ pieces: many(26) })).toEqual([]);
    expect(faultsOf({ pieces: many(27) })).toEqual([
      { code: 'too-long', path: ['pieces'], expected: 26, received: 27 },
    ]);
    const alike = many(27).map((piece) => ({ ...piece, print: 'one' }));
    expect(faultsOf({ pieces: alike })).toEqual([]);
  });

  test('checkStash refuses a seam that leaves nothing of a block that was asked for', () => {
    const fault = { code: 'seam-eats-face' };
    expect(faultsOf({ block: { cut: 4, seam: 1.99 } })).toEqual([]);
    expect(faultsOf({ block: { cut: 4, seam: 2 } })).toMatchObject([
      { code: fault.code, path: ['block', 'seam'], expected: '2 in', received: '2 in' },
    ]);
    expect(faultsOf({ cuts: [9, 4], block: { seam: 2 } })).toMatchObject([
      { code: fault.code, path: ['cuts', 1] },
    ]);
  });

  test('checkStash passes over usual cut sizes in silence while one of them will do', () => {
    expect(faultsOf({ block: { seam: '8 cm' } })).toEqual([]);
    expect(faultsOf({ unit: 'cm', block: { seam: '10 cm' } })).toEqual([]);
  });
});
