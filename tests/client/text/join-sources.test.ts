import { describe, expect, test } from 'vitest';
import { joinSources } from '../../../client/text/join-sources.ts';
import { loadText, type TextSource } from '../../../client/text/languages.ts';

const makeSource = (word: string): TextSource<string> => ({
  en: word,
  load: {
    es: async () => `${word} es`,
    de: async () => `${word} de`,
    fr: async () => `${word} fr`,
  },
});
const joined = joinSources({ text: makeSource('a'), words: makeSource('b') });

describe('joinSources', () => {
  test('joinSources has the English words at once', () => {
    expect(joined.en).toEqual({ text: 'a', words: 'b' });
  });

  test.each(['es', 'de', 'fr'] as const)('joinSources loads every part in %s', async (language) => {
    expect(await joined.load[language]()).toEqual({
      text: `a ${language}`,
      words: `b ${language}`,
    });
  });

  test('joinSources gives no half of a language: with one part lost, all are English', async () => {
    const lost = makeSource('b');
    const broken = { ...lost, load: { ...lost.load, de: () => Promise.reject(new Error('gone')) } };
    const half = joinSources({ text: makeSource('a'), words: broken });
    expect(await loadText(half, 'de')).toEqual({ text: 'a', words: 'b' });
    expect(await loadText(half, 'fr')).toEqual({ text: 'a fr', words: 'b fr' });
  });
});
