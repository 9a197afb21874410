import { describe, expect, test } from 'vitest';
import { FIRST_DRAFT } from '../../../../client/elements/kits/kits-state.ts';
import { switchKits } from '../../../../client/elements/kits/switch-kits.ts';
import { answerKits } from '../../../support/stock.ts';

const { input } = answerKits();

describe('switchKits', () => {
  const there = switchKits(FIRST_DRAFT, 'cm', { called: {}, input });

  test('says lengths in centimetres and costs of a metre, in the same currency', () => {
    expect(there.draft).toMatchObject({
      unit: 'cm',
      currency: 'USD',
      'plan.block.cut': '20.32',
      'bolts.0.width': '111.76',
      'bolts.0.length': '8 yd',
      'bolts.0.cost': '12.25',
      'costs.labour': '4.00',
    });
  });

  test('comes back letter by letter', () => {
    const back = switchKits(there.draft, 'in', { called: there.called, input: undefined });
    expect(back.draft).toEqual({ ...FIRST_DRAFT, unit: 'in' });
  });

  test('leaves a draft that is in the unit already alone', () => {
    expect(switchKits(FIRST_DRAFT, 'in', { called: {}, input }).draft).toBe(FIRST_DRAFT);
  });
});
