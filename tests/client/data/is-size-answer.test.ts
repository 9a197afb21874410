import { describe, expect, test } from 'vitest';
import { isPlanAnswer } from '../../../client/data/is-plan-answer.ts';
import { isSizeAnswer } from '../../../client/data/is-size-answer.ts';
import { computePlan } from '../../../client/data/on-device.ts';
import { planThrow } from '../../support/plan-throw.ts';

const plain = () => JSON.parse(JSON.stringify(planThrow()));

/** An answer with one of its fields, by its dotted path, taken out or replaced. */
function change(path: string, value?: unknown): unknown {
  const answer = plain();
  const parts = path.split('.');
  const last = parts.pop() ?? '';
  const holder = parts.reduce((at, key) => at[key], answer);
  if (value === undefined) delete holder[last];
  else holder[last] = value;
  return answer;
}

describe('isSizeAnswer', () => {
  test('isSizeAnswer takes what the core answers, with offers and prices too', () => {
    expect(isSizeAnswer(plain())).toBe(true);
    const offers =
      'layers.0.role=top&layers.0.offers.0.kind=roll&layers.0.offers.0.id=bolt&layers.0.offers.0.price=1120' +
      '&layers.1.role=backing&layers.1.offers.0.kind=pieces&layers.1.offers.0.id=fat&layers.1.offers.0.width=18' +
      '&layers.1.offers.0.length=21&layers.1.offers.0.count=1&layers.1.offers.0.most=1';
    const priced = computePlan(`target.size=lap&${offers}`);
    expect(priced.ok && isSizeAnswer(JSON.parse(JSON.stringify(priced.value)))).toBe(true);
  });

  test('isSizeAnswer passes over what a later engine adds', () => {
    expect(isSizeAnswer({ ...plain(), later: { more: 1 } })).toBe(true);
  });

  test.each(['links.page', 'grid.rows', 'fit.width', 'fabrics.0.buy', 'time', 'cautions.0.text'])(
    'isSizeAnswer refuses an answer without %s, and so does the plan',
    (path) => {
      expect(isSizeAnswer(change(path))).toBe(false);
      expect(isPlanAnswer(change(path))).toBe(false);
    },
  );

  test('isSizeAnswer refuses a figure that is none, and a unit of another engine', () => {
    expect(isSizeAnswer(change('grid.columns', '4'))).toBe(false);
    expect(isSizeAnswer(change('input.unit', 'ell'))).toBe(false);
  });
});
