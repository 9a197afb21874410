import { describe, expect, test } from 'vitest';
import type { StashRequest } from '#core/contract.ts';
import { hasSelvages, specifyStash } from '#core/stash/stash-spec.ts';
import { resolveStash } from '#core/wish/resolve-stash.ts';
import { topPiece } from '../../support/stashes.ts';

const specify = (own: Partial<StashRequest>) => {
  const read = resolveStash({ pieces: [topPiece('a', 21, 18)], ...own });
  if (!read.ok) throw new Error(JSON.stringify(read.faults));
  return specifyStash(read.value.input);
};

describe('specifyStash', () => {
  test('specifyStash turns lengths into millimetres once', () => {
    expect(specify({ squaring: 1, usable: 3, block: { seam: 0.5 } })).toMatchObject({
      pieces: [{ id: 'a', width: 533.4, length: 457.2, selvage: 0, squaring: 25.4, count: 1 }],
      seam: 12.7,
      usable: 76.2,
      layers: [
        { role: 'top', count: 1 },
        { role: 'backing', count: 1 },
      ],
    });
  });

  test('specifyStash passes over cut sizes that the seam leaves nothing of', () => {
    expect(specify({ block: { seam: 3.5 } }).cuts[0]).toBeCloseTo(7.5 * 25.4, 9);
    expect(specify({ block: { cut: 8 } }).cuts).toEqual([203.2]);
  });

  test('specifyStash knows the three kinds of shape', () => {
    expect(specify({}).aim).toEqual({ ratio: 0.8 });
    expect(specify({ shape: { target: { columns: 3, rows: 4 } } }).aim).toEqual({
      grid: { columns: 3, rows: 4 },
    });
    expect(specify({ shape: { target: { width: 40, height: 50 } } }).aim).toEqual({
      wish: { width: 1016, height: 1270, at: 'washed' },
    });
  });
});

describe('hasSelvages', () => {
  test('hasSelvages from the usual width of a bolt on', () => {
    expect([41.9, 42, 44].map((width) => hasSelvages(width, 'in'))).toEqual([false, true, true]);
    expect([107, 108].map((width) => hasSelvages(width, 'cm'))).toEqual([false, true]);
  });
});
