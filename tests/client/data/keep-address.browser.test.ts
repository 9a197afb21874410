import { afterEach, describe, expect, test, vi } from 'vitest';
import { keepAddress, putAddress } from '../../../client/data/keep-address.ts';

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

describe('putAddress', () => {
  afterEach(() => {
    vi.restoreAllMocks();
    history.replaceState(null, '', before);
  });

  test('putAddress(address, way) puts in a query and a fragment', () => {
    putAddress('?columns=2&rows=1#AB', 'replace');
    expect(location.search + location.hash).toBe('?columns=2&rows=1#AB');
  });

  test.each(['push', 'replace'] as const)(
    'putAddress(address, "%s") goes on where the browser takes no more',
    (way) => {
      const refuse = () => {
        throw new DOMException('Too many calls', 'SecurityError');
      };
      const called = vi.spyOn(history, `${way}State`).mockImplementation(refuse);
      expect(() => putAddress('?columns=3', way)).not.toThrow();
      expect(() => keepAddress('?columns=4', way)).not.toThrow();
      expect(called).toHaveBeenCalledTimes(2);
      expect(location.href).toBe(before);
    },
  );
});
