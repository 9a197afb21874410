import { describe, expect, test } from 'vitest';
import type { PlanLayer } from '#core/contract.ts';
import { explainRest } from '#core/plan/explain-rest.ts';
import { judgeDerivations } from '../../support/judge-derivations.ts';
import { explainedFor } from '../../support/plans.ts';

const QUARTER = { kind: 'pieces', id: 'quarter', width: 21, length: 18, count: 5 } as const;
const REST = { kind: 'pieces', id: 'rest', width: 30, length: 20, count: 1, most: 1 } as const;

function explain(top: Partial<PlanLayer>) {
  const layers = [{ role: 'top', prints: 1, ...top }, { role: 'backing' }] as const;
  const explained = explainedFor({ target: { columns: 6, rows: 8 }, layers });
  const [need] = explained.plan.cloth;
  if (need === undefined) throw new Error('No cloth');
  const rows = explainRest(explained, need, 0);
  return {
    rows,
    wrong: judgeDerivations(rows, explained.figures),
    paths: rows.map((row) => row.path),
  };
}

const BOTH = ['fabrics.0.spareFree', 'fabrics.0.waste'];

describe('explainRest', () => {
  test('explainRest derives what a length off the roll gives beyond', () => {
    expect(explain({})).toMatchObject({ wrong: [], paths: BOTH });
    const washed = { prewashed: true, shrink: { length: 7, width: 4 } };
    expect(explain(washed)).toMatchObject({ wrong: [], paths: BOTH });
  });

  test.each<[string, Partial<PlanLayer>]>([
    ['packs', { offers: [QUARTER] }],
    ['two kinds of packs', { offers: [QUARTER, REST] }],
    ['packs and a roll', { offers: [REST, { ...QUARTER, most: 1 }, { kind: 'roll', id: 'bolt' }] }],
    ['packs that are not enough', { offers: [{ ...QUARTER, most: 1 }] }],
    ['packs washed before', { offers: [QUARTER], prewashed: true }],
  ])('explainRest derives what %s give beyond', (_, top) => {
    expect(explain(top)).toMatchObject({ wrong: [], paths: BOTH });
  });

  test('explainRest of nothing bought is nought, without waste', () => {
    const prints = [{ id: 'a', share: 0 }, { id: 'b' }];
    expect(explain({ prints })).toMatchObject({ wrong: [], paths: ['fabrics.0.spareFree'] });
    expect(explain({ prints, offers: [QUARTER] }).wrong).toEqual([]);
  });
});
