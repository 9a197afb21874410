import { describe, expect, test } from 'vitest';
import { readLength } from '#core/read-length.ts';
import { commaReadings } from '../../../client/text/comma-readings.ts';

describe('commaReadings', () => {
  test.each(['en', 'es', 'de', 'fr'])(
    'commaReadings(%j) are both read, as a thousand times one another',
    (language) => {
      const [whole = '', decimal = ''] = commaReadings(language, '8,125');
      expect(readLength(whole, 'cm')).toEqual({ ok: true, value: 81_250 });
      expect(readLength(decimal, 'cm')).toEqual({ ok: true, value: 81.25 });
    },
  );

  test('commaReadings keep the unit', () => {
    expect(commaReadings('fr', '1,200 mm')).toEqual(['1200 mm', '1,2000 mm']);
  });

  test.each([['1,234,567'], ['12,345.5']])('commaReadings of %j are thousands alone', (typed) => {
    expect(commaReadings('en', typed)).toEqual([typed.replaceAll(',', '')]);
  });
});
