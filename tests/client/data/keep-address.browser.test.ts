import { afterEach, describe, expect, test, vi } from 'vitest';
import { keepAddress } from '../../../client/data/keep-address.ts';

const before = location.href;

describe('keepAddress', () => {
  afterEach(() => history.replaceState(null, '', before));

  test('keepAddress(query, "push") is a step back', () => {
    // The length of the history tells nothing here: a push drops what lay ahead in it.
    const push = vi.spyOn(history, 'pushState');
    const replace = vi.spyOn(history, 'replaceState');
    keepAddress('?target.size=lap', 'push');
    expect(location.search).toBe('?target.size=lap');
    expect(push).toHaveBeenCalledOnce();
    expect(replace).not.toHaveBeenCalled();
    vi.restoreAllMocks();
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
