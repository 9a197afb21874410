import { describe, expect, test } from 'vitest';
import { readWishes } from '../../../api/pages/read-wishes.ts';

describe('readWishes', () => {
  test('reads all that a host may ask', () => {
    expect(
      readWishes([
        ['lang', 'es'],
        ['locked', 'block target.width'],
        ['currency', 'EUR'],
        ['scheme', 'dark'],
        ['ink', 'FFEEDD'],
      ]),
    ).toEqual({
      lang: 'es',
      locked: 'block target.width',
      currency: 'EUR',
      scheme: 'dark',
      colors: [['ink', '#ffeedd']],
      faults: [],
    });
  });
  test.each([
    ['lang', 'it', 'not-one-of'],
    ['locked', 'block"', 'not-one-of'],
    ['currency', 'eur', 'not-one-of'],
    ['scheme', 'sepia', 'not-one-of'],
    ['ink', 'red;background:url(//a.test)', 'not-one-of'],
    ['ink', '#112233', 'not-one-of'],
    ['toString', 'x', 'unknown-key'],
    ['look', 'x', 'unknown-key'],
  ])('refuses %s=%s as %s and uses nothing of it', (name, value, code) => {
    const { faults, colors, ...rest } = readWishes([[name, value]]);
    expect(faults).toMatchObject([{ code, path: [`_${name}`] }]);
    expect([colors, rest]).toEqual([[], {}]);
  });
  test('refuses what is given twice', () => {
    const { faults } = readWishes([
      ['lang', 'de'],
      ['lang', 'fr'],
    ]);
    expect(faults).toEqual([{ code: 'repeated-key', path: ['_lang'] }]);
  });
});
