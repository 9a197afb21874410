import { describe, expect, test } from 'vitest';
import { explainShrink } from '#core/plan/explain-shrink.ts';
import { judgeDerivations } from '../../support/judge-derivations.ts';
import { explainedFor } from '../../support/plans.ts';

const request = { target: { width: 40, height: 50 } };

describe('explainShrink', () => {
  test.each(['alternating', 'aligned'] as const)(
    'explainShrink writes the rest points of %s grain out in full',
    (grain) => {
      const explained = explainedFor({ ...request, grain, washes: 3 });
      const rows = explainShrink(explained);
      expect(judgeDerivations(rows, explained.figures)).toEqual([]);
      expect(rows.map(({ path }) => path)).toEqual([
        'size.change.width',
        'size.washed.width',
        'size.washed.low.width',
        'size.washed.high.width',
        'size.change.height',
        'size.washed.height',
        'size.washed.low.height',
        'size.washed.high.height',
      ]);
    },
  );

  test('explainShrink weighs a pressed layer by a quarter of its pull', () => {
    const layers = [
      { role: 'top', shrink: { length: 2, width: 2 }, gsm: 100 },
      { role: 'backing', shrink: { length: 6, width: 6 }, gsm: 200 },
    ] as const;
    const [row] = explainShrink(explainedFor({ ...request, layers, grain: 'aligned' }));
    expect(row?.numbers).toEqual({
      across0: 0.02,
      acrossPull0: 25,
      across1: 0.06,
      acrossPull1: 200,
    });
    expect(row?.value).toBeCloseTo((-100 * (25 * 0.02 + 200 * 0.06)) / 225, 4);
  });
});
