import { describe, expect, test } from 'vitest';
import { explainTime } from '#core/plan/explain-time.ts';
import { judgeDerivations } from '../../support/judge-derivations.ts';
import { explainedFor } from '../../support/plans.ts';

const request = { target: { width: 40, height: 50 } };

describe('explainTime', () => {
  test('explainTime tells of every stage, and of their sum', () => {
    const explained = explainedFor({ ...request, pace: { snip: 0.031, sewMetre: 1.7 } });
    const rows = explainTime(explained);
    expect(judgeDerivations(rows, explained.figures)).toEqual([]);
    const stages = Object.keys(explained.figures.time).map((name) => `time.${name}`);
    expect(rows.map(({ path }) => path).toSorted()).toEqual(stages.toSorted());
  });
});
