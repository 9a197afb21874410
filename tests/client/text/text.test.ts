import { expect, test } from 'vitest';
import { loadText } from '../../../client/text/languages.ts';
import { planText } from '../../../client/text/text.ts';

test.each(['en', 'es', 'de', 'fr'] as const)(
  'planText has what all elements share and its own words in %s',
  async (language) => {
    const text = await loadText(planText, language);
    expect(text.language).toBe(language);
    expect(text.light.language).toBe(language);
    expect(Object.keys(text).toSorted()).toEqual(Object.keys(planText.en).toSorted());
  },
);
