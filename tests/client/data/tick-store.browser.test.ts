import { afterEach, beforeEach, describe, expect, test, vi } from 'vitest';
import { keepTicks, readTicks } from '../../../client/data/tick-store.ts';

describe('readTicks and keepTicks', () => {
  beforeEach(() => localStorage.clear());
  afterEach(() => vi.restoreAllMocks());

  test('readTicks gives what keepTicks kept, each plan its own', () => {
    keepTicks('/?a', ['cut', 'stack']);
    keepTicks('/?b', ['wash']);
    expect(readTicks('/?a')).toEqual(['cut', 'stack']);
    expect(readTicks('/?b')).toEqual(['wash']);
    expect(readTicks('/?c')).toEqual([]);
  });

  test('keepTicks(plan, []) leaves nothing behind', () => {
    keepTicks('/?a', ['cut']);
    keepTicks('/?a', []);
    expect(localStorage).toHaveLength(0);
  });

  test('readTicks and keepTicks bear a storage that throws', () => {
    const refuse = () => {
      throw new DOMException('no', 'SecurityError');
    };
    vi.spyOn(Storage.prototype, 'getItem').mockImplementation(refuse);
    vi.spyOn(Storage.prototype, 'setItem').mockImplementation(refuse);
    expect(() => keepTicks('/?a', ['cut'])).not.toThrow();
    expect(readTicks('/?a')).toEqual([]);
  });
});
