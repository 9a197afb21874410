import { expect, test } from 'vitest';
import { FABRIC_NAMES } from '../../../../client/data/names.ts';
import { en } from '../../../../client/text/light/en.ts';

test('the light words name every cloth as people write it', () => {
  expect(FABRIC_NAMES.map(en.fabric)).toContain('Cotton batting');
  for (const name of FABRIC_NAMES) expect(en.fabric(name)).toMatch(/^[A-Z][a-z]+( [a-z]+)?$/);
});

test('the light words have a sentence for each kind of trouble', () => {
  expect(Object.keys(en.trouble).toSorted()).toEqual(['broken', 'busy', 'silent', 'strange']);
});
