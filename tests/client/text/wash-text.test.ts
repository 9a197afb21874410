import { expect, test } from 'vitest';
import { loadText } from '../../../client/text/languages.ts';
import { washText } from '../../../client/text/wash-text.ts';

test.each(['en', 'es', 'de', 'fr'] as const)(
  'washText has all its words in %s',
  async (language) => {
    const parts = await loadText(washText, language);
    expect(Object.keys(parts)).toEqual(['text', 'cautions', 'light', 'words']);
    for (const part of Object.values(parts)) expect(part.language).toBe(language);
  },
);
