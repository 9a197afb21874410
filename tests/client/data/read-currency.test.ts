import { expect, test } from 'vitest';
import { readCurrency } from '../../../client/data/read-currency.ts';

test.each([
  ['EUR', 'EUR'],
  ['usd', 'USD'],
  ['USD', 'USD'],
  ['jpy', 'JPY'],
  ['$', ''],
  ['E', ''],
  ['euro', ''],
  ['€', ''],
  ['', ''],
  [null, ''],
  [undefined, ''],
])('readCurrency of %s is %s', (named, code) => {
  expect(readCurrency(named)).toBe(code);
});
