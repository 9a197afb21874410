import { expect, test } from 'vitest';
import { planErrand } from '../../../../client/elements/plan/plan-errand.ts';

test('planErrand asks for a throw where nothing is said, and not while a place is empty', () => {
  expect(planErrand.complete({})).toMatchObject({ 'target.size': 'throw' });
  expect(planErrand.findBlank({ 'target.width': '' })).toEqual([
    { code: 'empty', path: ['target', 'width'] },
  ]);
});
