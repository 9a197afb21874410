import { describe, expect, test } from 'vitest';
import { FAULT_CODES } from '#core/faults.ts';

describe('FAULT_CODES', () => {
  test('FAULT_CODES stand once each', () => {
    expect(new Set(FAULT_CODES).size).toBe(FAULT_CODES.length);
  });

  test('FAULT_CODES are plain words with hyphens, fit for an address', () => {
    for (const code of FAULT_CODES) expect(code).toMatch(/^[a-z]+(-[a-z]+)*$/);
  });
});
