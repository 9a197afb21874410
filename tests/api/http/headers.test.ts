import { describe, expect, test } from 'vitest';
import {
  CACHED_HEADERS,
  makeFrameHeaders,
  makePageHeaders,
  OPTIONS_HEADERS,
  PROBLEM_HEADERS,
  UNCACHED_HEADERS,
} from '../../../api/http/headers.ts';

const records = {
  CACHED_HEADERS,
  OPTIONS_HEADERS,
  PROBLEM_HEADERS,
  UNCACHED_HEADERS,
  makePageHeaders: makePageHeaders('sha256-x'),
};

describe.each(Object.entries(records))('%s', (_, record) => {
  const headers = new Headers(record);
  test('is frozen', () => expect(Object.isFrozen(record)).toBe(true));
  test('lets any page read it', () => {
    expect(headers.get('access-control-allow-origin')).toBe('*');
    expect(headers.get('access-control-expose-headers')).toContain('ETag');
    expect(headers.get('cross-origin-resource-policy')).toBe('cross-origin');
  });
  test('lets nothing run, nothing be guessed and nothing be framed', () => {
    expect(headers.get('x-content-type-options')).toBe('nosniff');
    expect(headers.get('content-security-policy')).toContain("default-src 'none'");
    expect(headers.get('content-security-policy')).toContain("frame-ancestors 'none'");
    expect(headers.get('content-security-policy')).not.toContain('unsafe');
    expect(headers.get('strict-transport-security')).toMatch(/^max-age=\d{8}/);
  });
});

test('makePageHeaders lets one style pass and no script', () => {
  const policy = makePageHeaders('sha256-x')['Content-Security-Policy'];
  expect(policy).toContain("style-src 'sha256-x'");
  expect(policy).not.toContain('script-src');
});

describe('makeFrameHeaders', () => {
  test('lets anybody frame the page, names the origin beside self, and lets nothing inline run', () => {
    const headers = makeFrameHeaders('https://a.test');
    const policy = headers['Content-Security-Policy'] ?? '';
    expect(policy).toContain('frame-ancestors *');
    expect(policy).toContain("script-src 'self' https://a.test;");
    expect(policy).not.toMatch(/unsafe|sha256/);
    expect(Object.keys(headers)).not.toContain('X-Frame-Options');
  });
  test('lets one style pass by its digest', () => {
    const policy = makeFrameHeaders('https://a.test', 'sha256-x')['Content-Security-Policy'];
    expect(policy).toContain("style-src 'self' https://a.test 'sha256-x';");
  });
});
