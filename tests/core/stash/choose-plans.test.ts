import { describe, expect, test } from 'vitest';
import type { StashRequest } from '#core/contract.ts';
import { SIZE_LIMITS } from '#core/limits.ts';
import { choosePlans } from '#core/stash/choose-plans.ts';
import { specifyStash } from '#core/stash/stash-spec.ts';
import { supplyBlocks } from '#core/stash/supply-blocks.ts';
import { resolveStash } from '#core/wish/resolve-stash.ts';
import { topPiece } from '../../support/stashes.ts';

const choose = (request: StashRequest) => {
  const read = resolveStash(request);
  if (!read.ok) throw new Error('refused');
  const spec = specifyStash(read.value.input);
  return choosePlans(
    spec,
    spec.cuts.map((cut) => supplyBlocks(spec, cut)),
  );
};
const quarters = (count: number) =>
  Array.from({ length: count }, (_, at) => topPiece(`q${at}`, 21, 18, { count: 3 }));

describe('choosePlans', () => {
  test('choosePlans: none is beaten by another, the largest first, no more than a dozen', () => {
    for (const touch of ['sides', 'corners'] as const) {
      const { plans } = choose({ pieces: quarters(9), touch });
      expect(plans.length).toBeGreaterThan(2);
      expect(plans.length).toBeLessThanOrEqual(SIZE_LIMITS.stashOptions);
      const areas = plans.map(({ grid }) => grid.washed.width * grid.washed.height);
      expect(areas).toEqual(areas.toSorted((one, other) => other - one));
      const farness = plans.map(({ grid }) => Math.floor((grid.strain - 1) / 0.05 + 1e-9));
      for (const [at, { grid }] of plans.entries()) {
        for (let before = 0; before < at; before += 1) {
          const isBeaten =
            (farness[before] ?? 0) <= (farness[at] ?? 0) &&
            (plans[before]?.grid.blocks ?? 0) <= grid.blocks;
          expect(isBeaten).toBe(false);
        }
      }
    }
  });

  test('choosePlans tells why there is none: three prints cannot be kept apart at corners', () => {
    expect(choose({ pieces: quarters(3), touch: 'corners' })).toEqual({
      plans: [],
      limitedBy: ['touch'],
    });
    expect(choose({ pieces: quarters(3), touch: 'sides' }).plans.length).toBeGreaterThan(0);
  });

  test('choosePlans tells why there is none: pieces too small', () => {
    expect(choose({ pieces: [topPiece('a', 5, 5)] })).toEqual({ plans: [], limitedBy: ['top'] });
  });

  test('choosePlans shows a smaller plan of one cut size for its shape alone', () => {
    const { plans } = choose({ pieces: quarters(9), block: { cut: 9 } });
    expect(plans[0]?.limitedBy).toEqual(['top']);
    expect(plans.slice(1).map(({ limitedBy }) => limitedBy)).toEqual(
      plans.slice(1).map(() => ['shape']),
    );
    const strains = plans.map(({ grid }) => grid.strain);
    expect(strains).toEqual(strains.toSorted((one, other) => other - one));
  });
});
