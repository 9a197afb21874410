import { describe, expect, test } from 'vitest';
import { sayFault, sayFaultAt } from '../../../../client/elements/kits/kits-context.ts';
import { kitsContext } from '../../../support/stock.ts';

describe('sayFault', () => {
  test.each([
    [['bolts', 0, 'id'], 'missing', 'Give it a name of its own.'],
    [['bolts', 0, 'role'], 'not-one-of', 'Choose top, middle or backing.'],
    [['costs', 'labour'], 'wrong-type', '“dear” is not an amount. Write 11.20 or 11,20.'],
    [['bolts', 0, 'cost'], 'wrong-type', '“dear” is not an amount. Write 11.20 or 11,20.'],
  ] as const)('says of %j that is %j: %j', (path, code, said) => {
    expect(sayFault(kitsContext(), { code, path, received: 'dear' })).toBe(said);
  });

  test('says limits of money as people write it, in the currency of the draft', () => {
    const fault = { code: 'too-large', path: ['costs', 'price'], expected: 1_000_000_000 } as const;
    const say = (currency: string) => sayFault(kitsContext({ draft: { currency } }), fault);
    expect(say('EUR')).toContain('10000000.00');
    expect(say('JPY')).toContain('1000000000');
  });
});

test('sayFaultAt finds what is wrong at one place', () => {
  const faults = [{ code: 'not-whole', path: ['kits'] }] as const;
  expect(sayFaultAt(kitsContext({ faults }), 'kits')).toBe('Give a whole number.');
  expect(sayFaultAt(kitsContext({ faults }), 'perKit.spare')).toBeUndefined();
});
