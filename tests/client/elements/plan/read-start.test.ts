import { describe, expect, test } from 'vitest';
import { readStart } from '../../../../client/elements/plan/read-start.ts';

const NOTHING = { address: '', request: undefined, plan: null };

describe('readStart', () => {
  test('readStart takes the address before the request, and the request before the plan', () => {
    const all = {
      address: '?target.size=lap',
      request: { target: { size: 'queen' } },
      plan: 'target.size=king',
    } as const;
    const sizeOf = (start: Parameters<typeof readStart>[0]) =>
      readStart(start).draft['target.size'];
    expect(sizeOf(all)).toBe('lap');
    expect(sizeOf({ ...all, address: '' })).toBe('queen');
    expect(sizeOf({ ...NOTHING, plan: all.plan })).toBe('king');
    expect(sizeOf(NOTHING)).toBe('throw');
  });

  test('readStart passes over what other sites append to an address', () => {
    expect(readStart({ ...NOTHING, address: '?utm_source=mail&fbclid=1' }).faults).toEqual([]);
  });

  test('readStart tells what of ours an address gives twice', () => {
    const { faults, draft } = readStart({
      ...NOTHING,
      address: '?target.size=lap&target.size=queen&ref=mail',
    });
    expect(faults.map(({ code }) => code)).toEqual(['repeated-key']);
    expect(draft['target.size']).toBe('lap');
  });

  test('readStart tells what a host got wrong', () => {
    const { faults, draft } = readStart({ ...NOTHING, plan: 'target.size=lap&colour=red' });
    expect(faults).toEqual([{ code: 'unknown-key', path: ['colour'], received: 'red' }]);
    expect(draft['target.size']).toBe('lap');
  });
});
