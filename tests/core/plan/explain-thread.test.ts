import { describe, expect, test } from 'vitest';
import { explainThread } from '#core/plan/explain-thread.ts';
import { judgeDerivations } from '../../support/judge-derivations.ts';
import { explainedFor } from '../../support/plans.ts';

const request = { target: { width: 40, height: 50 } };

describe('explainThread', () => {
  test('explainThread tells of seams, ratio, thread and bobbins', () => {
    const explained = explainedFor(request);
    const rows = explainThread(explained);
    expect(judgeDerivations(rows, explained.figures)).toEqual([]);
    const told = rows.map(({ path }) => path).toSorted();
    const figures = Object.keys(explained.figures.thread).filter((name) => name !== 'unit');
    expect(told).toEqual(figures.map((name) => `thread.${name}`).toSorted());
  });

  test('explainThread goes by the tails where nothing is chained', () => {
    const explained = explainedFor({ ...request, stitch: { chained: false } });
    expect(judgeDerivations(explainThread(explained), explained.figures)).toEqual([]);
    expect(explained.figures.thread.used).toBe(explained.figures.thread.singly);
  });

  test('explainThread names a measured ratio as measured', () => {
    const explained = explainedFor({ ...request, stitch: { ratio: 2.6 } });
    const rows = explainThread(explained);
    expect(judgeDerivations(rows, explained.figures)).toEqual([]);
    expect(rows.find(({ path }) => path === 'thread.ratio')).toMatchObject({
      formula: 'measured',
      numbers: { measured: 2.6 },
    });
  });
});
