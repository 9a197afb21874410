import { describe, expect, test } from 'vitest';
import { holdsWork } from '../../../client/data/holds-work.ts';
import type { ShownPlan } from '../../../client/data/is-plan-answer.ts';
import { planThrow } from '../../support/plan-throw.ts';

/** An answer as it comes over the wire, one part of it changed or taken out. */
function spoil(change: object): ShownPlan {
  return JSON.parse(JSON.stringify({ ...planThrow({ pupils: 3 }), ...change }));
}

describe('holdsWork', () => {
  test.each([
    {},
    { pupils: 12 },
    { unit: 'cm', target: { columns: 1, rows: 1 } },
    {
      pupils: 4,
      layers: [
        { role: 'top', offers: [{ kind: 'roll', id: 'Bolt', price: 300 }] },
        { role: 'backing' },
      ],
    },
  ] as const)('holdsWork takes the answer to %j', (request) => {
    expect(holdsWork(JSON.parse(JSON.stringify(planThrow(request))))).toBe(true);
  });

  test.each([
    { work: undefined },
    { bulk: {} },
    { fringe: { snips: 'many' } },
    { class: { pupils: 3 } },
    { steps: [{ id: 'cut', do: 'Cut', detail: '', minutes: 1, figures: {} }] },
  ])('holdsWork refuses an answer with %j', (change) => {
    expect(holdsWork(spoil(change))).toBe(false);
  });
});
