import { expect, test } from 'vitest';
import { baseSource } from '../../../../client/text/base/source.ts';
import { faultsSource } from '../../../../client/text/faults/source.ts';
import { loadText } from '../../../../client/text/languages.ts';
import { sharedSource } from '../../../../client/text/shared/source.ts';

test.each(['en', 'es', 'de', 'fr'] as const)(
  'sharedSource has the words of all elements, and what is wrong, in %s',
  async (language) => {
    const { faults, ...base } = await loadText(sharedSource, language);
    expect(base).toEqual(await loadText(baseSource, language));
    expect(faults).toEqual(await loadText(faultsSource, language));
  },
);
