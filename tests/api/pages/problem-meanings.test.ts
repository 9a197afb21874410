import { expect, test } from 'vitest';
import { PROBLEM_MEANINGS } from '../../../api/pages/problem-meanings.ts';
import { PROBLEM_SLUGS } from '../../../api/pages/problem-page.ts';

test.each(PROBLEM_SLUGS)(
  'PROBLEM_MEANINGS says %s in whole sentences that are safe in HTML',
  (slug) => {
    expect(PROBLEM_MEANINGS[slug]).toMatch(/^[A-Z].{20,}\.$/);
    expect(PROBLEM_MEANINGS[slug]).not.toMatch(/[<>&]/);
  },
);

test('PROBLEM_MEANINGS says nothing twice', () => {
  expect(new Set(Object.values(PROBLEM_MEANINGS)).size).toBe(PROBLEM_SLUGS.length);
});
