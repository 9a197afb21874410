import { afterEach, describe, expect, test } from 'vitest';
import { keepAddress } from '../../../client/data/keep-address.ts';

const before = location.href;

describe('keepAddress', () => {
  afterEach(() => history.replaceState(null, '', before));

  test('keepAddress(query, "push") is a step back', () => {
    const { length } = history;
    keepAddress('?target.size=lap', 'push');
    expect(location.search).toBe('?target.size=lap');
    expect(history.length).toBe(length + 1);
  });

  test('keepAddress(query, "replace") is none', () => {
    const { length } = history;
    keepAddress('?target.size=queen', 'replace');
    expect(location.search).toBe('?target.size=queen');
    expect(history.length).toBe(length);
  });

  test('keepAddress(query, "leave") does nothing', () => {
    const { search } = location;
    keepAddress('?target.size=king', 'leave');
    expect(location.search).toBe(search);
  });
});
