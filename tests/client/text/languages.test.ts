import { describe, expect, test } from 'vitest';
import { chooseLanguage, loadText, type TextSource } from '../../../client/text/languages.ts';

const SOURCE: TextSource<string> = {
  en: 'seam',
  load: {
    es: async () => 'costura',
    de: async () => 'Naht',
    fr: () => Promise.reject(new Error('no network')),
  },
};

describe('chooseLanguage', () => {
  test.each([
    [['de'], 'de'],
    [['de-AT'], 'de'],
    [['DE-at'], 'de'],
    [['zh-Hant', 'fr-CA', 'de'], 'fr'],
    [['es-419'], 'es'],
    [['den'], 'en'],
    [['xx'], 'en'],
    [[''], 'en'],
    [[], 'en'],
  ] as const)('chooseLanguage(%j) is %s', (tags, language) => {
    expect(chooseLanguage(tags)).toBe(language);
  });
});

describe('loadText', () => {
  test.each([
    ['en', 'seam'],
    ['es', 'costura'],
    ['de', 'Naht'],
  ] as const)('loadText in %s is %j', async (language, words) => {
    expect(await loadText(SOURCE, language)).toBe(words);
  });

  test('loadText falls back to English where a language cannot be had', async () => {
    expect(await loadText(SOURCE, 'fr')).toBe('seam');
  });
});
