import { describe, expect, test } from 'vitest';
import { FAULT_CODES } from '#core/faults.ts';
import { en } from '../../../../client/text/faults/en.ts';

describe('what is wrong, in English', () => {
  test.each(FAULT_CODES)('en[%j] is a sentence that fills its gaps', (code) => {
    const sentence = en[code]({
      code,
      path: ['block', 'seam'],
      expected: '1 in',
      received: '5 in',
    });
    expect(sentence).toMatch(/^[A-Z“\d].*\.$/);
    expect(sentence).not.toMatch(/undefined|\[object/);
  });

  test('en says something still where a fault tells neither what was found nor what was expected', () => {
    for (const code of FAULT_CODES) {
      expect(en[code]({ code, path: [] }).length, code).toBeGreaterThan(10);
    }
  });
});
