import { describe, expect, test } from 'vitest';
import { chooseKitsText } from '../../../client/text/kits-text.ts';

describe('chooseKitsText', () => {
  test.each([[['en-GB']], [['xx']], [[]]])('chooseKitsText(%j) is English', (languages) => {
    const { text, cloth, words } = chooseKitsText(languages);
    expect([text.language, cloth.language, words.language]).toEqual(['en', 'en', 'en']);
  });
});
