import { expect, test } from 'vitest';
import { computeYardage } from '../../../client/data/yardage-on-device.ts';
import { sayBought } from '../../../client/fields/say-bought.ts';
import { CLOTH } from '../../support/light-contexts.ts';

test('sayBought tells packs by their count and their name', () => {
  const outcome = computeYardage(
    `${CLOTH}&fabrics.0.offers.0.kind=pieces&fabrics.0.offers.0.id=Bundle&fabrics.0.offers.0.width=18&fabrics.0.offers.0.length=21&fabrics.0.offers.0.count=6`,
  );
  const [roll] = outcome.ok ? outcome.value.fabrics : [];
  expect(roll && sayBought('en', roll.buy)).toMatch(/^\d+ × Bundle$/);
});

test('sayBought tells all lines of a purchase, lengths as the language has them', () => {
  const lines = [
    { offer: 'roll', unit: 'm', amount: 2.2 },
    { offer: 'Fat quarters', unit: 'pack', count: 2 },
  ] as const;
  expect(sayBought('de', lines)).toBe('2,2\u00a0m + 2 × Fat quarters');
  expect(sayBought('en', [])).toBe('');
});
