import { describe, expect, test } from 'vitest';
import { readHost } from '../../../client/host/read-host.ts';

const KEYS = ['target', 'unit'];

describe('readHost', () => {
  test('readHost reads an object and a query alike', () => {
    const draft = { 'target.size': 'lap', unit: 'in' };
    for (const preset of ['target.size=lap', { target: { size: 'lap' } }]) {
      expect(readHost({ preset, unit: 'in' }, KEYS)).toEqual({ draft, faults: [] });
    }
  });

  test('readHost takes the unit beside the preset only where that names none', () => {
    expect(readHost({ preset: 'unit=in', unit: 'cm' }, KEYS).draft).toEqual({ unit: 'in' });
    expect(readHost({ preset: undefined, unit: 'cm' }, KEYS).draft).toEqual({ unit: 'cm' });
    expect(readHost({ preset: null, unit: null }, KEYS).draft).toEqual({});
  });

  test('readHost tells what has no place', () => {
    const { faults } = readHost({ preset: 'colour=red', unit: null }, KEYS);
    expect(faults).toEqual([{ code: 'unknown-key', path: ['colour'], received: 'red' }]);
  });
});
