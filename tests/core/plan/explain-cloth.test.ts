import { describe, expect, test } from 'vitest';
import { explainCloth } from '#core/plan/explain-cloth.ts';
import { judgeDerivations } from '../../support/judge-derivations.ts';
import { explainedFor } from '../../support/plans.ts';

const request = { target: { width: 40, height: 50 } };

describe('explainCloth', () => {
  test('explainCloth tells how each row of cloth came about, print by print', () => {
    const explained = explainedFor(request);
    const rows = explainCloth(explained);
    expect(judgeDerivations(rows, explained.figures)).toEqual([]);
    const names = ['spare', 'usableWidth', 'perStrip', 'strips', 'length', 'buy.amount', 'waste'];
    for (const index of explained.figures.fabrics.keys()) {
      const told = rows.map(({ path }) => path);
      for (const name of names) expect(told).toContain(`fabrics.${index}.${name}`);
    }
  });

  test('explainCloth counts a prewash into width and length', () => {
    const layers = [
      { role: 'top', prewashed: true, shrink: { length: 10, width: 5 } },
      { role: 'backing' },
    ] as const;
    const rows = explainCloth(explainedFor({ ...request, layers }));
    const row = (path: string) => rows.find((found) => found.path === path);
    expect(row('fabrics.0.usableWidth')?.numbers).toMatchObject({ prewash: 0.05 });
    expect(row('fabrics.0.length')?.numbers).toMatchObject({ prewash: 0.1 });
  });

  test('explainCloth of a print without a block says that nothing is cut or bought', () => {
    const prints = [{ id: 'a' }, { id: 'b', share: 0 }];
    const layers = [{ role: 'top', prints }, { role: 'backing' }] as const;
    const explained = explainedFor({ ...request, layers });
    expect(explained.figures.fabrics[1]).toMatchObject({ pieces: 0, strips: 0, length: 0 });
    expect(judgeDerivations(explainCloth(explained), explained.figures)).toEqual([]);
  });
});
