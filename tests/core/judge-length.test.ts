import { describe, expect, test } from 'vitest';
import { judgeLength } from '#core/judge-length.ts';

describe('judgeLength', () => {
  test.each([
    ['-3', 'negative-length'],
    ['− 1/2', 'negative-length'],
    ['8 1/00', 'zero-parts'],
    ['40 x 50', 'two-lengths'],
    ["4' 2", 'two-lengths'],
    ['8 to 9', 'two-lengths'],
    ['8 - 1/2', 'two-lengths'],
    ['8 ells', 'unknown-unit'],
    ['8 in wide', 'unknown-unit'],
    ['1/0.5', 'not-a-length'],
    ['10 x 20 x 30', 'not-a-length'],
    ['in 8', 'not-a-length'],
    ['x', 'not-a-length'],
  ])('judgeLength(%j) is %s', (text, code) => {
    expect(judgeLength(text)).toBe(code);
  });

  test('judgeLength looks no closer at a long text', () => {
    expect(judgeLength('1 '.repeat(50_000))).toBe('not-a-length');
  });
});
