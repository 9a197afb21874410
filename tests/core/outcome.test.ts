import { describe, expect, test } from 'vitest';
import { type Fault, fail, succeed } from '#core/outcome.ts';
import { deepFreeze } from '../support/deep-freeze.ts';

describe('succeed', () => {
  test('succeed(3) holds 3, and succeed(undefined) holds that', () => {
    expect(succeed(3)).toEqual({ ok: true, value: 3 });
    expect(succeed(undefined)).toEqual({ ok: true, value: undefined });
  });

  test('succeed(value) holds the very value', () => {
    const value = deepFreeze({ width: 1 });
    const outcome = succeed(value);
    expect(outcome.ok && outcome.value).toBe(value);
  });
});

describe('fail', () => {
  test('fail(faults) holds all of them, in their order', () => {
    const faults: readonly Fault[] = deepFreeze([
      { code: 'missing', path: ['target'] },
      { code: 'too-large', path: ['layers', 0, 'width'], expected: '157 in', received: 900 },
    ]);
    expect(fail(faults)).toEqual({ ok: false, faults });
  });
});
