import { describe, expect, test } from 'vitest';
import { FABRICS } from '#core/tables/fabrics.ts';
import { usualFibres } from '#core/tables/fibres.ts';

describe('usualFibres', () => {
  test.each(FABRICS.map(({ name }) => name))(
    'usualFibres(%s) come to 100 %, largest first',
    (name) => {
      const percents = usualFibres(name).map(({ percent }) => percent);
      expect(percents.reduce((sum, percent) => sum + percent, 0)).toBe(100);
      expect(percents).toEqual(percents.toSorted((one, other) => other - one));
    },
  );
});
