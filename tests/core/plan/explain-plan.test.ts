import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { explainPlan } from '#core/plan/explain-plan.ts';
import { resolvePlan } from '#core/wish/resolve-plan.ts';
import { judgeDerivations } from '../../support/judge-derivations.ts';
import { explainedFor } from '../../support/plans.ts';
import { planRequests } from '../../support/requests.ts';

const request = { target: { width: 40, height: 50 } };

describe('explainPlan', () => {
  test('explainPlan tells of every figure that a reader would ask about, each once', () => {
    const explained = explainedFor({ ...request, target: { size: 'queen' } });
    const rows = explainPlan(explained);
    expect(judgeDerivations(rows, explained.figures)).toEqual([]);
    const told = new Set(rows.map(({ path }) => path));
    for (const path of [
      'grid.blocks',
      'block.face',
      'block.clearance',
      'size.sewn.width',
      'size.sewn.height',
      'size.stitchLine.width',
      'size.stitchLine.height',
      'size.washed.width',
      'size.washed.height',
      'wish.width',
      'wish.height',
      'fit.width',
      'fit.height',
      'bulk.seamLayers',
      'bulk.crossingLayers',
      'bulk.crossingThickness',
      'fabrics.0.length',
      'thread.used',
      'fringe.snips',
      'weight.dry',
      'mismatch.rowDeviation',
      'time.total',
    ]) {
      expect(told).toContain(path);
    }
  });

  test('explainPlan tells the wish for a bed from the mattress and its drops', () => {
    const bed = { width: 60, length: 80, drop: 12, footDrop: 6 };
    const rows = explainPlan(explainedFor({ ...request, target: { bed } }));
    const wish = (side: string) => rows.find(({ path }) => path === `wish.${side}`);
    expect(wish('width')).toMatchObject({ numbers: { mattress: 60, drop: 12 }, value: 84 });
    expect(wish('height')).toMatchObject({ numbers: { mattress: 80, footDrop: 6 }, value: 86 });
  });

  test('explainPlan has nothing to say of a wish that was given as it is', () => {
    const rows = explainPlan(explainedFor(request));
    expect(rows.some(({ path }) => path.startsWith('wish.'))).toBe(false);
  });

  test('explainPlan holds for any plan', () => {
    fc.assert(
      fc.property(planRequests, (given) => {
        const read = resolvePlan(given);
        fc.pre(read.ok);
        const explained = explainedFor(given);
        expect(judgeDerivations(explainPlan(explained), explained.figures)).toEqual([]);
      }),
      { numRuns: 60 },
    );
  });
});
