import { describe, expect, test } from 'vitest';
import { FAULT_CODES } from '#core/faults.ts';
import { en } from '../../../../client/text/shared/en.ts';

describe('the words that all elements share in English', () => {
  test.each(FAULT_CODES)('en.faults[%j] is a sentence that fills its gaps', (code) => {
    const sentence = en.faults[code]({
      code,
      path: ['block', 'seam'],
      expected: '1 in',
      received: '5 in',
    });
    expect(sentence).toMatch(/^[A-Z“\d].*\.$/);
    expect(sentence).not.toMatch(/undefined|\[object/);
  });

  test('en.faults say something still where a fault tells neither what was found nor what was expected', () => {
    for (const code of FAULT_CODES) {
      expect(en.faults[code]({ code, path: [] }).length, code).toBeGreaterThan(10);
    }
  });

  test('en names cloths and sizes as people write them', () => {
    expect(en.fabric('cotton-batting')).toBe('Cotton batting');
    expect(en.size('california-king')).toBe('California king');
    expect(en.role('backing')).toBe('Backing');
  });
});
