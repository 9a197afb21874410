import { describe, expect, test } from 'vitest';
import { cutLeast } from '#core/cloth/strips/cut-least.ts';
import { leastStrips } from '#core/cloth/strips/least-strips.ts';
import { BY_HAND } from '../../../support/strip-cases.ts';

const NONE = { across: 500, along: 500, count: 0, canTurn: false };

describe('cutLeast', () => {
  test('cutLeast passes over sizes of which none is wanted, and names the others by their place', () => {
    const cut = cutLeast([NONE, ...BY_HAND.kinds], BY_HAND.usable);
    const plain = cutLeast(BY_HAND.kinds, BY_HAND.usable);
    expect(cut.length).toBe(leastStrips(BY_HAND.kinds, BY_HAND.usable).length);
    expect(cut.strips).toEqual(
      plain.strips.map((strip) => ({
        ...strip,
        pieces: strip.pieces.map((piece) => ({ ...piece, kind: piece.kind + 1 })),
      })),
    );
  });

  test('cutLeast of nothing is nothing', () => {
    const nothing = { strips: [], length: 0, bound: 0, optimal: true };
    expect(cutLeast([], 100)).toEqual(nothing);
    expect(cutLeast([NONE], 100)).toEqual(nothing);
  });
});
