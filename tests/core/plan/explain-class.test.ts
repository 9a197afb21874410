import { expect, test } from 'vitest';
import { explainClass } from '#core/plan/explain-class.ts';
import { supplyClass } from '#core/plan/supply-class.ts';
import { judgeDerivations } from '../../support/judge-derivations.ts';
import { explainedFor } from '../../support/plans.ts';

function explain(request: Parameters<typeof explainedFor>[0]) {
  const { figures, ...others } = explainedFor(request);
  const { pupils } = others.input;
  const all = pupils === undefined ? {} : { class: supplyClass(others.plan, others.spec, pupils) };
  const explained = { ...others, figures: { ...figures, ...all } };
  return { explained, rows: explainClass(explained) };
}

test('explainClass derives cloth, thread, needles and blades of a class', () => {
  const { explained, rows } = explain({
    target: { columns: 4, rows: 5 },
    layers: [
      {
        role: 'top',
        prints: [
          { id: 'Heron dot', count: 20 },
          { id: 'Rust check', count: 0 },
        ],
      },
      { role: 'backing', prewashed: true },
    ],
    pupils: 12,
  });
  expect(judgeDerivations(rows, explained.figures)).toEqual([]);
  const told = rows.map(({ path }) => path);
  expect(told).toContain('class.fabrics.2.buy.amount');
  expect(told).toContain('class.needles.all');
});

test('explainClass has nothing to tell where no class was asked for', () => {
  expect(explain({ target: { columns: 4, rows: 5 } }).rows).toEqual([]);
});
