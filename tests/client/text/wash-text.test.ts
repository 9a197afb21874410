import { expect, test } from 'vitest';
import { chooseWashText } from '../../../client/text/wash-text.ts';

test('chooseWashText gives both tables of words in English', () => {
  for (const languages of [['en-GB'], ['xx', 'en'], []]) {
    const { text, words } = chooseWashText(languages);
    expect([text.language, words.language]).toEqual(['en', 'en']);
  }
});
