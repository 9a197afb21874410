import { describe, expect, test } from 'vitest';
import { RETIREMENTS, tellRetirement } from '../../../api/http/retirement.ts';

const row = {
  deprecated: '2025-01-01',
  sunset: '2025-07-01',
  successor: '/v2/plan',
  more: '/api',
} as const;

describe('tellRetirement', () => {
  test('writes the date of deprecation as RFC 9745 does, in seconds', () => {
    // `date -u -d 2025-01-01 +%s`
    expect(tellRetirement(row)['Deprecation']).toBe('@1735689600');
  });
  test('writes the sunset as a date of HTTP, RFC 9110 §5.6.7', () => {
    expect(tellRetirement(row)['Sunset']).toBe('Tue, 01 Jul 2025 00:00:00 GMT');
  });
  test('links to what comes after and to what to do', () => {
    const link = tellRetirement(row)['Link'] ?? '';
    const found = [...link.matchAll(/<([^>]+)>; rel="([a-z-]+)"/g)].map(([, to, rel]) => [rel, to]);
    expect(found).toEqual([
      ['successor-version', '/v2/plan'],
      ['deprecation', '/api'],
      ['sunset', '/api'],
    ]);
  });
  test('refuses a sunset before the deprecation, and a day that is none', () => {
    expect(() => tellRetirement({ ...row, sunset: '2024-12-31' })).toThrow('No sunset');
    expect(() => tellRetirement({ ...row, sunset: '2025-02-30x' })).toThrow('No sunset');
  });
});

test('RETIREMENTS has no row that cannot be told', () => {
  for (const one of Object.values(RETIREMENTS)) expect(() => tellRetirement(one)).not.toThrow();
  expect(RETIREMENTS).toEqual({});
});
