import { expect, test } from 'vitest';
import { en } from '../../../client/text/en.ts';
import { washEn } from '../../../client/text/wash-en.ts';
import { chooseWashText } from '../../../client/text/wash-text.ts';

test('chooseWashText gives both tables of words in one language, English where there is no other', () => {
  for (const languages of [['en-GB'], ['xx', 'en'], []]) {
    expect(chooseWashText(languages)).toEqual({ text: en, words: washEn });
  }
});
