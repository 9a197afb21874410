import { describe, expect, test } from 'vitest';
import { chooseStashText } from '../../../client/text/stash-text.ts';

describe('chooseStashText', () => {
  test.each([[['en-GB']], [['xx']], [[]]])('chooseStashText(%j) is English', (languages) => {
    const { text, cloth, words } = chooseStashText(languages);
    expect([text.language, cloth.language, words.language]).toEqual(['en', 'en', 'en']);
  });
});
