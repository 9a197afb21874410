import { describe, expect, test } from 'vitest';
import { FAULT_CODES } from '#core/faults.ts';
import { describeFault } from '../../../api/http/describe-fault.ts';

describe('describeFault', () => {
  test('says what is wrong, with the numbers, and what would make it right', () => {
    const path = ['block', 'seam'];
    expect(
      [
        describeFault({ code: 'too-large', path: ['spare'], expected: 100, received: 300 }),
        describeFault({
          code: 'not-one-of',
          path: ['unit'],
          expected: ['in', 'cm'],
          received: 'ft',
        }),
        describeFault({ code: 'seam-eats-face', path, expected: '2 in', received: '2.5 in' }),
        describeFault({
          code: 'wrong-type',
          path: [],
          expected: ['a group of parts'],
          received: 'list',
        }),
        describeFault({
          code: 'too-small',
          path: ['prints'],
          expected: 'at least one share above 0',
        }),
      ].join('\n'),
    ).toMatchInlineSnapshot(`
      "spare is 300, which is too large: the most is 100.
      unit is "ft": give one of in or cm.
      block.seam: an allowance of 2.5 in at both sides leaves nothing of the block to see; it must be less than 2 in.
      The input is a list: give a group of parts.
      prints is too small: it needs at least one share above 0."
    `);
  });
  test.each(FAULT_CODES)('makes a sentence of %s, with nothing undefined in it', (code) => {
    for (const fault of [
      { code, path: ['a', 0] },
      { code, path: [], expected: 'this', received: 'that' },
      { code, path: ['a'], expected: ['this', 'these', 'those'], received: 3 },
    ]) {
      const sentence = describeFault(fault);
      expect(sentence).toMatch(/^\S.*\.$/);
      expect(sentence).not.toMatch(/undefined|null|\[object|NaN/);
    }
  });
  test('gives back 40 characters of what was sent and no more', () => {
    const sentence = describeFault({
      code: 'not-a-length',
      path: ['a'],
      received: 'x'.repeat(999),
    });
    expect(sentence).toContain(`"${'x'.repeat(40)}…"`);
    expect(sentence.length).toBeLessThan(200);
  });
});
