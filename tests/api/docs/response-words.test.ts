import { expect, test } from 'vitest';
import { HEADER_WORDS, PROBLEM_WORDS } from '../../../api/docs/response-words.ts';
import { PROBLEM_KINDS } from '../../../api/http/problem-kinds.ts';

test('PROBLEM_WORDS speaks of every status that an endpoint may answer with', () => {
  const statuses = new Set(Object.values(PROBLEM_KINDS).map(([status]) => status));
  // An address that is none, and what only `/oembed` says, are answered beside the endpoints.
  for (const status of [404, 501] as const) statuses.delete(status);
  for (const status of statuses) expect(PROBLEM_WORDS).toHaveProperty(`Problem${status}`);
});

test('HEADER_WORDS explains every header that an answer is described with', () => {
  const text = JSON.stringify(PROBLEM_WORDS);
  const named = [...text.matchAll(/headers\/([\w-]+)/g)].map(([, name]) => String(name));
  expect(named.length).toBeGreaterThan(3);
  for (const name of named) expect(HEADER_WORDS).toHaveProperty(name);
});
