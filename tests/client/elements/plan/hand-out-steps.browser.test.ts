import { expect, test } from 'vitest';
import { stepsLeaf } from '../../../../client/elements/plan/hand-out-steps.ts';
import { makeHandOut } from '../../../support/hand-out.ts';
import { watchContext } from '../../../support/plan-context.ts';
import { renderFresh } from '../../../support/render.ts';

test('stepsLeaf numbers every step, and draws those that a drawing helps', () => {
  const handOut = makeHandOut();
  const root = renderFresh(stepsLeaf(watchContext(), handOut));
  const heads = [...root.querySelectorAll('h3')].map(({ textContent }) => textContent);
  expect(heads).toHaveLength(handOut.plan.steps.length);
  expect(heads[1]).toBe('2. Cut 66 squares of 12 in');
  expect(root.querySelectorAll('.deed svg')).toHaveLength(9);
  expect(root.querySelector('.heed')).not.toBeNull();
});
