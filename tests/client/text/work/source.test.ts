import { expect, test } from 'vitest';
import { loadText } from '../../../../client/text/languages.ts';
import { workSource } from '../../../../client/text/work/source.ts';

test.each(['en', 'es', 'de', 'fr'] as const)(
  'the words of the work in %s fill their gaps',
  async (language) => {
    const { focus, handOut, sheet } = await loadText(workSource, language);
    expect(focus.step(2, 13)).toMatch(/2\D+13/);
    expect(handOut.fault(60)).toContain('60');
    expect(sheet.all(1)).not.toBe(sheet.all(2).replace('2', '1'));
    expect(sheet.blocksText(5, 6, 30)).toMatch(/5\D+6\D+30/);
    expect(sheet.lacking(1)).toMatch(/1/);
  },
);
