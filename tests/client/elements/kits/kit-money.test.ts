import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import {
  readAmounts,
  switchCosts,
  writeAmounts,
} from '../../../../client/elements/kits/kit-money.ts';

const minor = fc.integer({ min: 0, max: 1e8 });
const currency = fc.constantFrom('EUR', 'JPY', 'KWD');

describe('readAmounts and writeAmounts', () => {
  test('readAmounts(writeAmounts(draft)) is the draft of an address', () => {
    fc.assert(
      fc.property(currency, minor, minor, (code, cost, labour) => {
        const draft = {
          currency: code,
          'bolts.0.cost': `${cost}`,
          'costs.labour': `${labour}`,
          'costs.margin': '40',
        };
        const { draft: read, faults } = readAmounts(writeAmounts(draft, 'USD'));
        expect([read, faults]).toEqual([draft, []]);
      }),
    );
  });

  test('writeAmounts names the currency where the address does not', () => {
    expect(writeAmounts({ 'costs.price': '5000' }, 'USD')).toEqual({
      currency: 'USD',
      'costs.price': '50.00',
    });
  });
});

describe('switchCosts', () => {
  test('a yard is 0.9144 metres, exactly: the yard and pound agreement of 1959', () => {
    const { draft } = switchCosts({ 'bolts.0.cost': '9.144', 'costs.price': '50' }, 'cm', {
      currency: 'KWD',
      called: {},
    });
    expect(draft).toEqual({ 'bolts.0.cost': '10.000', 'costs.price': '50' });
  });

  test('switching back loses nothing, whatever was typed', () => {
    fc.assert(
      fc.property(fc.oneof(fc.string(), fc.constantFrom('11,2', '7', '8.9')), (typed) => {
        const draft = { 'bolts.0.cost': typed };
        const there = switchCosts(draft, 'cm', { currency: 'EUR', called: {} });
        const back = switchCosts(there.draft, 'in', { currency: 'EUR', called: there.called });
        expect(back.draft).toEqual(draft);
      }),
    );
  });
});
