import { describe, expect, test } from 'vitest';
import { FAULT_CODES } from '#core/faults.ts';
import { en } from '../../../client/text/en.ts';

/** Every text of a table, functions called with stand-ins. */
function listTexts(value: unknown): readonly string[] {
  if (typeof value === 'string') return [value];
  if (typeof value === 'function') {
    return [String(value('queen', 'flannel', '12'))];
  }
  if (typeof value !== 'object' || value === null) return [];
  return Object.values(value).flatMap(listTexts);
}

describe('en', () => {
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

  test('en exclaims nothing and says nothing twice over', () => {
    const { faults: _faults, ...rest } = en;
    for (const text of listTexts(rest)) {
      expect(text).not.toMatch(/!/);
      expect(text.length).toBeGreaterThan(0);
    }
  });

  test('en names cloths and sizes as people write them', () => {
    expect(en.fabric('cotton-batting')).toBe('Cotton batting');
    expect(en.size('california-king')).toBe('California king');
    expect(en.role('backing')).toBe('Backing');
  });

  test('en counts bobbins', () => {
    expect(en.shopping.threadText('90 yd', 1, '9 yd')).toContain('1 bobbin.');
    expect(en.shopping.threadText('180 yd', 2, '9 yd')).toContain('2 bobbins.');
  });
});
