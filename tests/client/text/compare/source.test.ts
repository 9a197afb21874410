import { expect, test } from 'vitest';
import { FIGURES } from '../../../../client/elements/compare/list-figures.ts';
import { compareSource } from '../../../../client/text/compare/source.ts';

test('the words of the comparison name every figure that is told, each its own way', async () => {
  const { en, load } = compareSource;
  for (const words of [en, await load.es(), await load.de(), await load.fr()]) {
    const names = FIGURES.map((name) => words.figures[name]);
    expect(new Set(names).size).toBe(FIGURES.length);
    expect(words.more('8 in')).toContain('8 in');
    expect(words.more('8 in')).not.toBe(words.less('8 in'));
  }
});
