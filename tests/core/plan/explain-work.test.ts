import { expect, test } from 'vitest';
import { explainWork } from '#core/plan/explain-work.ts';
import { judgeDerivations } from '../../support/judge-derivations.ts';
import { explainedFor } from '../../support/plans.ts';

test.each([
  { target: { width: 40, height: 50 } },
  { unit: 'cm', target: { columns: 7, rows: 9 }, stitch: { chained: false, ratio: 2.6 } },
  { target: { columns: 1, rows: 1 } },
] as const)('explainWork(%o) tells of chains, middle, perimeter and row ends', (request) => {
  const explained = explainedFor(request);
  const rows = explainWork(explained);
  expect(judgeDerivations(rows, explained.figures)).toEqual([]);
  const told = rows.map(({ path }) => path);
  expect(told).toContain('work.perimeter');
  expect(told).toContain('mismatch.unpick');
  const { chains } = explained.figures.work;
  expect(told.filter((path) => path.startsWith('work.chains.'))).toHaveLength(chains.length);
});
