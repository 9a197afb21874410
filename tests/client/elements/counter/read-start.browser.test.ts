import { beforeEach, describe, expect, test, vi } from 'vitest';
import { keepDraft } from '../../../../client/data/draft-store.ts';
import { keepPlace, readStart } from '../../../../client/elements/counter/read-start.ts';

const start = { address: '', remember: true, preset: 'target.size=throw', unit: undefined };

describe('readStart', () => {
  beforeEach(() => localStorage.clear());

  test('readStart takes the address before the device, and that before the host', () => {
    expect(readStart(start).place.question).toBe('target.size=throw');
    keepDraft('ragbloom-counter', '?target.size=lap#0.got=1');
    expect(readStart(start).place).toEqual({ question: 'target.size=lap', shop: { '0.got': '1' } });
    const address = '?cut=8&count=9';
    expect(readStart({ ...start, address }).place.question).toBe('cut=8&count=9');
    expect(readStart({ ...start, remember: false }).place.question).toBe('target.size=throw');
  });

  test('readStart finds what was typed before anything was asked, and else the unit of the host', () => {
    keepDraft('ragbloom-counter', '#cut=8%C2%BD');
    expect(readStart({ ...start, preset: '' }).place.shop).toEqual({ cut: '8½' });
    const fresh = { address: '', remember: false, preset: '', unit: 'cm' };
    expect(readStart(fresh).place.shop).toEqual({ unit: 'cm' });
  });

  test('readStart takes what is begun in the address before the list of the device', () => {
    keepDraft('ragbloom-counter', '?target.size=lap#0.got=1');
    expect(readStart({ ...start, address: '#cut=8' }).place.shop).toEqual({ cut: '8' });
    expect(readStart({ ...start, address: '#at=1' }).place.question).toBe('target.size=lap');
  });

  test('readStart knows the last plan of this device, where it may look', () => {
    keepDraft('last-plan', 'target.size=king');
    expect(readStart(start).lastPlan).toBe('target.size=king');
    expect(readStart({ ...start, remember: false }).lastPlan).toBe('');
  });
});

describe('keepPlace', () => {
  const home = location.href;

  test('keepPlace writes query and fragment, and nothing at all for nothing', () => {
    keepPlace('?target.size=lap#0.got=1');
    expect(location.search + location.hash).toBe('?target.size=lap#0.got=1');
    keepPlace('');
    expect(location.search + location.hash).toBe('');
    history.replaceState(null, '', home);
  });

  test('keepPlace lets a browser refuse', () => {
    const refuse = vi.spyOn(history, 'replaceState').mockImplementation(() => {
      throw new DOMException('Too often', 'SecurityError');
    });
    expect(() => keepPlace('#at=1')).not.toThrow();
    expect(refuse).toHaveBeenCalledOnce();
    refuse.mockRestore();
  });
});
