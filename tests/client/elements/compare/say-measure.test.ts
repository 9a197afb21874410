import fc from 'fast-check';
import { expect, test } from 'vitest';
import {
  roundAsSaid,
  sayMeasure,
  tellIn,
} from '../../../../client/elements/compare/say-measure.ts';

const english = {
  language: 'en',
  unit: 'in',
  sayMoney: (minor: number) => `$${minor / 100}`,
} as const;
const german = { language: 'de', unit: 'cm', sayMoney: String } as const;

test.each([
  ['length', 215.9, '8½ in', '21,6 cm'],
  ['cloth', 2171.7, '2⅜ yd', '2,2 m'],
  ['mass', 1500, '3.3 lb', '1,5 kg'],
  ['time', 276, '4½ h', '4½ h'],
  ['count', 3200, '3,200', '3.200'],
  ['money', 1250, '$12.5', '1250'],
] as const)('sayMeasure of %s %d says %s, and %s', (measure, value, one, other) => {
  expect(sayMeasure(measure, value, english).replaceAll('\u00a0', ' ')).toBe(one);
  expect(sayMeasure(measure, value, german).replaceAll('\u00a0', ' ')).toBe(other);
});

test('roundAsSaid changes nothing of what is said', () => {
  const measure = fc.constantFrom('length', 'cloth', 'mass', 'count');
  fc.assert(
    fc.property(
      measure,
      fc.integer({ min: 1, max: 90_000 }),
      fc.boolean(),
      (kind, value, isMetric) => {
        const telling = isMetric ? german : english;
        const rounded = roundAsSaid(kind, value, telling.unit);
        expect(sayMeasure(kind, rounded, telling)).toBe(sayMeasure(kind, value, telling));
      },
    ),
  );
});

test.each([
  ['EUR', '€12.50'],
  ['jpy', '¥1,250'],
  ['', ''],
  ['euro', ''],
  [undefined, ''],
])('tellIn of the currency %s tells 1250 as %s', (currency, said) => {
  expect(sayMeasure('money', 1250, tellIn('en', 'in', currency))).toBe(said);
});
