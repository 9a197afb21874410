import { describe, expect, test } from 'vitest';
import type { AnyDraft } from '../../../client/data/draft.ts';
import { readStart, type Start } from '../../../client/host/read-start.ts';

const KEYS = ['target', 'block', 'unit'];
const NOTHING: Start = { address: '', kept: '', preset: '', unit: undefined, locked: [] };
const read = (start: Partial<Start>) => readStart<AnyDraft>({ ...NOTHING, ...start }, KEYS);

describe('readStart', () => {
  test('readStart takes the address before what was kept, and that before the host', () => {
    const address = '?target.size=lap';
    const kept = 'target.size=throw';
    const preset = 'target.size=queen';
    expect(read({ address, kept, preset }).draft).toEqual({ 'target.size': 'lap' });
    expect(read({ kept, preset }).draft).toEqual({ 'target.size': 'throw' });
    expect(read({ preset }).draft).toEqual({ 'target.size': 'queen' });
  });

  test('readStart passes over what other sites append to an address', () => {
    const start = read({ address: '?ref=mail', preset: 'target.size=lap' });
    expect(start).toMatchObject({ draft: { 'target.size': 'lap' }, faults: [] });
  });

  test('readStart tells what of a preset has no place, and keeps the rest', () => {
    const start = read({ preset: { colour: 'red', target: { size: 'lap' } } });
    expect(start.draft).toEqual({ 'target.size': 'lap' });
    expect(start.faults).toEqual([{ code: 'unknown-key', path: ['colour'], received: 'red' }]);
  });

  test('readStart measures in the unit of the host where its preset names none', () => {
    expect(read({ preset: 'block.cut=20', unit: 'cm' }).draft).toMatchObject({ unit: 'cm' });
    expect(read({ preset: 'unit=in', unit: 'cm' }).draft).toMatchObject({ unit: 'in' });
  });

  test('readStart reads an address without a unit in inches, whatever the host measures in', () => {
    const { draft } = read({ address: '?target.width=40', unit: 'cm' });
    expect(draft).toEqual({ 'target.width': '40' });
  });

  test('readStart keeps a locked length as long as the host gave it, in the unit of the address', () => {
    const start = { preset: 'block.cut=8', locked: ['block'] };
    const { draft, host } = read({ ...start, address: '?unit=cm&block.cut=30&target.width=100' });
    expect(draft).toEqual({ unit: 'cm', 'target.width': '100', 'block.cut': '20.32' });
    expect(host['block.cut']).toBe('20.32');
  });

  test('readStart says an address in the unit that the host has locked', () => {
    const start = { preset: 'unit=in', locked: ['unit'] };
    const { draft } = read({ ...start, address: '?unit=cm&target.width=101.6' });
    expect(draft).toEqual({ unit: 'in', 'target.width': '40' });
  });
});
