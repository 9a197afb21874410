import { describe, expect, test } from 'vitest';
import { readStart } from '../../../../client/elements/stash/read-start.ts';
import { FIRST_DRAFT } from '../../../../client/elements/stash/stash-state.ts';

const start = (given: { address?: string; kept?: string; stash?: string }) =>
  readStart({ address: '', kept: '', stash: '', ...given });

describe('readStart', () => {
  test('begins with the invented shop where nobody asks for anything', () => {
    expect(start({})).toEqual({ draft: FIRST_DRAFT, hostFaults: [], hasPrints: false });
    expect(start({ address: '?ref=mail' }).draft).toBe(FIRST_DRAFT);
  });

  test('takes the address before what was kept beside another', () => {
    const { draft } = start({ address: '?pieces.0.id=Moss', kept: '?unit=cm#pieces.0.id=Fog' });
    expect(draft).toEqual({ 'pieces.0.id': 'Moss' });
  });

  test('takes what was kept beside this very address, or where there is none', () => {
    const kept = '?pieces.0.id=Moss#pieces.0.id=Moss&pieces.0.width=wide';
    expect(start({ address: '?pieces.0.id=Moss', kept }).draft['pieces.0.width']).toBe('wide');
    expect(start({ kept }).draft['pieces.0.width']).toBe('wide');
  });

  test('remembers that the table was emptied', () => {
    expect(start({ kept: '#' }).draft).toEqual({});
  });

  test('takes what the host gives, and tells what has no place', () => {
    const { draft, hostFaults } = start({ stash: 'pieces.0.print=a&moon=full' });
    expect(draft).toEqual({ 'pieces.0.print': 'a' });
    expect(hostFaults.map(({ code }) => code)).toEqual(['unknown-key']);
    expect(start({ stash: 'pieces.0.print=a' }).hasPrints).toBe(true);
  });
});
