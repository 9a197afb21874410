import { expect, test } from 'vitest';
import { checklistSource } from '../../../../client/text/checklist/source.ts';
import { loadText } from '../../../../client/text/languages.ts';

test.each(['en', 'es', 'de', 'fr'] as const)(
  'the words of the checklist in %s fill their gaps',
  async (language) => {
    const words = await loadText(checklistSource, language);
    expect(words.done(3, 13)).toMatch(/3\D+13/);
    expect(words.left('4½ h')).toContain('4½ h');
    expect(words.row('AB')).toMatch(/AB$/);
  },
);
