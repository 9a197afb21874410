import { expect, test } from 'vitest';
import { ENDPOINTS } from '../../../api/app.ts';
import { ENDPOINT_WORDS } from '../../../api/docs/endpoint-words.ts';

test('ENDPOINT_WORDS has a row for each endpoint and none besides', () => {
  expect(Object.keys(ENDPOINT_WORDS).toSorted()).toEqual(
    ENDPOINTS.map(({ path }) => path).toSorted(),
  );
});

test.each(Object.entries(ENDPOINT_WORDS))(
  '%s has an example that says what it is',
  (path, words) => {
    const summaries = Object.values(words.examples).map(({ summary }) => summary);
    expect(summaries.length).toBeGreaterThan(0);
    for (const summary of summaries) expect(summary).toMatch(/^[A-Z].{10,}[^.]$/);
    expect(words.answer === undefined).toBe(path.endsWith('.svg'));
  },
);
