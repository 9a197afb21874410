import { describe, expect, test } from 'vitest';
import { FIRST_DRAFT } from '../../../../client/elements/kits/kits-state.ts';
import { readStart } from '../../../../client/elements/kits/read-start.ts';

const start = (given: { address?: string; kept?: string; kits?: string }) =>
  readStart({ address: '', kept: '', kits: '', ...given });

describe('readStart', () => {
  test('begins with the invented shop where nobody asks for anything', () => {
    expect(start({})).toEqual({ draft: FIRST_DRAFT, hostFaults: [], hasPrints: false });
    expect(start({ address: '?ref=mail' }).draft).toBe(FIRST_DRAFT);
  });

  test('takes the address before what was kept beside another', () => {
    const { draft } = start({ address: '?bolts.0.id=Moss', kept: '?unit=cm#bolts.0.id=Fog' });
    expect(draft['bolts.0.id']).toBe('Moss');
  });

  test('takes what was kept beside this very address, or where there is none', () => {
    const kept = '?bolts.0.id=Moss#bolts.0.id=Moss&bolts.0.width=wide';
    expect(start({ address: '?bolts.0.id=Moss', kept }).draft['bolts.0.width']).toBe('wide');
    expect(start({ kept }).draft['bolts.0.width']).toBe('wide');
  });

  test('remembers that the table was emptied', () => {
    expect(start({ kept: '#' }).draft).toEqual({});
  });

  test('takes what the host gives, and tells what has no place', () => {
    const { draft, hostFaults } = start({ kits: 'bolts.0.print=a&moon=full' });
    expect(draft['bolts.0.print']).toBe('a');
    expect(hostFaults.map(({ code }) => code)).toEqual(['unknown-key']);
    expect(start({ kits: 'bolts.0.print=a' }).hasPrints).toBe(true);
  });

  test('says money of an address and of a host as people type it, in its own decimals', () => {
    const { draft } = start({ address: '?bolts.0.cost=1120&costs.price=5000&currency=JPY' });
    expect([draft['bolts.0.cost'], draft['costs.price']]).toEqual(['1120', '5000']);
    expect(start({ kits: 'bolts.0.cost=1120' }).draft).toEqual({
      currency: 'USD',
      'bolts.0.cost': '11.20',
    });
    expect(start({ kept: '#bolts.0.cost=11' }).draft['bolts.0.cost']).toBe('11');
  });
});
