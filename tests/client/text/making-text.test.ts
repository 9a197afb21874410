import { expect, test } from 'vitest';
import { loadText } from '../../../client/text/languages.ts';
import { makingText } from '../../../client/text/making-text.ts';

test.each(['en', 'es', 'de', 'fr'] as const)(
  'makingText has the words of the sheets, of the list and of the steps in %s',
  async (language) => {
    const { making, steps, checklist } = await loadText(makingText, language);
    expect([making.language, steps.language]).toEqual([language, language]);
    expect(checklist.title).not.toBe(language === 'en' ? '' : makingText.en.checklist.title);
  },
);
