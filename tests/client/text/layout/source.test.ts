import { describe, expect, test } from 'vitest';
import { loadText } from '../../../../client/text/languages.ts';
import { layoutSource } from '../../../../client/text/layout/source.ts';

describe.each(['en', 'es', 'de', 'fr'] as const)('the words of the layout in %s', (language) => {
  test('fill their gaps', async () => {
    const words = await loadText(layoutSource, language);
    expect(words.board(5, 6)).toMatch(/5\D+6/);
    expect(words.cell('B', 3, 'Moss')).toBe('B3, Moss');
    expect(words.swapped('A1', 'B2')).toMatch(/A1.*B2/);
    expect(words.floor(words.page('A', 2))).toMatch(/A\D+2$/);
  });

  test('tell no pair from some', async () => {
    const { pairs } = await loadText(layoutSource, language);
    expect(pairs(0)).not.toMatch(/\d/);
    expect(pairs(3)).toMatch(/3/);
  });
});
