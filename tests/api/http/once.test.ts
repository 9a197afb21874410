import { describe, expect, test } from 'vitest';
import { once } from '../../../api/http/once.ts';

describe('once', () => {
  test('once makes nothing before it is asked, and one thing however often it is asked', () => {
    let made = 0;
    const give = once(() => {
      made += 1;
      return { made };
    });
    expect(made).toBe(0);
    expect(give()).toBe(give());
    expect(made).toBe(1);
  });

  test('once keeps nothing too: what comes to undefined is not made again', () => {
    let made = 0;
    const give = once(() => {
      made += 1;
    });
    give();
    give();
    expect(made).toBe(1);
  });

  test('once tries again where making failed', () => {
    let tries = 0;
    const give = once(() => {
      tries += 1;
      if (tries === 1) throw new Error('not yet');
      return tries;
    });
    expect(give).toThrow('not yet');
    expect(give()).toBe(2);
  });
});
