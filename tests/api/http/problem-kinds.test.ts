import { describe, expect, test } from 'vitest';
import { FAULT_CODES } from '#core/faults.ts';
import { chooseStatus, PROBLEM_KINDS } from '../../../api/http/problem-kinds.ts';

test('PROBLEM_KINDS has each fault code, the three that lie in no input, and nothing else', () => {
  expect(Object.keys(PROBLEM_KINDS).sort()).toEqual(
    [...FAULT_CODES, 'several-faults', 'too-many-requests', 'unknown-format'].sort(),
  );
});

test('PROBLEM_KINDS has no title twice', () => {
  const titles = Object.values(PROBLEM_KINDS).map(([, title]) => title);
  expect(new Set(titles).size).toBe(titles.length);
});

describe('chooseStatus', () => {
  test.each(FAULT_CODES)('of %s alone is its own', (code) => {
    expect(chooseStatus([code])).toBe(PROBLEM_KINDS[code][0]);
  });
  test('of several is that of what kept the message from being read', () => {
    expect(chooseStatus(['too-small', 'malformed-query', 'missing'])).toBe(400);
    expect(chooseStatus(['too-small', 'missing'])).toBe(422);
  });
});
