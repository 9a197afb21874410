import { describe, expect, test } from 'vitest';
import { fitsAcross } from '#core/cloth/strips/fits-across.ts';
import { listLevels } from '#core/cloth/strips/list-levels.ts';

describe('fitsAcross', () => {
  test('fitsAcross(a piece as wide as the cloth) holds; a hundredth of a millimetre more does not', () => {
    expect(fitsAcross(1000, 1000)).toBe(true);
    expect(fitsAcross(1000.01, 1000)).toBe(false);
  });

  test('fitsAcross says what listLevels finds, at the very edge too', () => {
    for (const more of [-1e-3, -1e-6, 0, 1e-6, 9e-6, 2e-5, 1e-3]) {
      const kind = { across: 1000 + more, along: 50, count: 1, canTurn: false };
      expect(fitsAcross(kind.across, 1000)).toBe(listLevels([kind], 1000).length > 0);
    }
  });
});
