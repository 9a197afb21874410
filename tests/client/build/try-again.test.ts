import { describe, expect, test } from 'vitest';
import { tryAgain } from '../../../client/build/try-again.ts';

describe('tryAgain', () => {
  test('tryAgain(script) leaves alone what is loaded at once, and what is no script of ours', () => {
    for (const script of ['import{a}from"./base-A1.js";', 'import(x)', 'import("lit")', '']) {
      expect(tryAgain(script)).toBe(script);
    }
  });

  test('tryAgain(script) has each script that may come later a second address', () => {
    const tried = tryAgain('a(import("./one-A1.js"));b(import("./two-B2.js"))');
    expect(tried).toContain('import("./one-A1.js?"+Date.now())');
    expect(tried).toContain('import("./two-B2.js?"+Date.now())');
  });
});
