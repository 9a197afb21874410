import { createHash } from 'node:crypto';
import { describe, expect, test } from 'vitest';
import { PROBLEM_KINDS } from '../../../api/http/problem-kinds.ts';
import {
  PROBLEM_SLUGS,
  PROBLEM_STYLE,
  PROBLEM_STYLE_HASH,
  writeNotFoundPage,
  writeProblemList,
  writeProblemPage,
} from '../../../api/pages/problem-page.ts';

describe('writeProblemPage', () => {
  test.each(PROBLEM_SLUGS)('explains %s', (slug) => {
    const page = writeProblemPage(slug) ?? '';
    expect(page).toContain(`<h1>${PROBLEM_KINDS[slug][1]}</h1>`);
    expect(page).toContain(`<code>${slug}</code>`);
    expect(page).not.toContain('<script');
  });
  test('has no page of another name, nor of what every object has', () => {
    expect(['', 'x', 'toString', '__proto__'].map(writeProblemPage)).toEqual(
      Array(4).fill(undefined),
    );
  });
});

test('writeProblemList links every kind', () => {
  for (const slug of PROBLEM_SLUGS) expect(writeProblemList()).toContain(`/problems/${slug}"`);
});

test('writeNotFoundPage has the title of its problem and ways on', () => {
  expect(writeNotFoundPage()).toContain(`<h1>${PROBLEM_KINDS['not-found'][1]}</h1>`);
  expect(writeNotFoundPage()).toContain('<a href="/counter">');
});

test('PROBLEM_STYLE_HASH is the digest of the style, as Content Security Policy takes it', () => {
  const digest = createHash('sha256').update(PROBLEM_STYLE).digest('base64');
  expect(PROBLEM_STYLE_HASH).toBe(`sha256-${digest}`);
});
