import { expect, test } from 'vitest';
import type { PlanRequest } from '#core/contract.ts';
import { groupCloth } from '../../../../client/elements/plan/group-cloth.ts';
import { planThrow } from '../../../support/plan-throw.ts';

function group(request: Partial<PlanRequest>) {
  const plan = planThrow({ pupils: 12, ...request });
  if (plan.class === undefined) throw new Error('no class');
  return groupCloth(plan, plan.class);
}

test('groupCloth puts cloths of which the same is bought into one row, with their letters', () => {
  const rows = group({ target: { columns: 4, rows: 5 }, block: { cut: 8 } });
  expect(rows.map(({ prints }) => prints.map(({ letter }) => letter).join(''))).toEqual([
    'ABCD',
    '',
  ]);
  expect(rows.map(({ squares }) => squares)).toEqual([6, 21]);
});

test('groupCloth keeps apart what differs, and leaves out prints without blocks', () => {
  const prints = [
    { id: 'Heron dot', count: 10 },
    { id: 'Rust check', count: 0 },
    { id: 'Oat sprig', count: 2 },
  ];
  const layers = [{ role: 'top', prints }, { role: 'backing' }] as const;
  const rows = group({ target: { columns: 3, rows: 4 }, block: { cut: 8 }, layers });
  expect(rows.map(({ prints: own }) => own)).toEqual([
    [{ letter: 'A', name: 'Heron dot' }],
    [{ letter: 'C', name: 'Oat sprig' }],
    [],
  ]);
});

test('groupCloth tells what is bought of offers in their own words', () => {
  const offers = [{ kind: 'roll', id: 'Bolt', price: 300 }] as const;
  const [top] = group({ layers: [{ role: 'top', prints: 1, offers }, { role: 'backing' }] });
  expect(top?.isWordy).toBe(true);
  expect(top?.all.purchase?.[0]?.text).toMatch(/yd/);
});
