import { describe, expect, test } from 'vitest';
import {
  sayCellFault,
  sayFault,
  sayLength,
} from '../../../../client/elements/stash/stash-context.ts';
import { stashContext } from '../../../support/stock.ts';

describe('sayFault', () => {
  test.each([
    [['pieces', 0, 'id'], 'missing', 'Give it a name of its own.'],
    [['pieces', 0, 'width'], 'missing', 'Type a number, such as 8½.'],
    [['pieces', 0, 'role'], 'not-one-of', 'Choose top, middle or backing.'],
  ] as const)('says of %j that is %j: %j', (path, code, said) => {
    expect(sayFault(stashContext(), { code, path })).toBe(said);
  });

  test('says nothing where nothing is wrong, and something of a fault of a later service', () => {
    expect(sayFault(stashContext(), undefined)).toBeUndefined();
    const later = JSON.parse('{"code":"moon-full","path":[]}');
    expect(sayFault(stashContext(), later)).toMatch(/\.$/);
  });
});

describe('sayCellFault', () => {
  test('finds the fault of one cell and of no other', () => {
    const path = ['pieces', 2, 'width'];
    const context = stashContext({ faults: [{ code: 'not-a-length', path, received: 'wide' }] });
    expect(sayCellFault(context, { row: 2, name: 'width' })).toContain('“wide”');
    expect(sayCellFault(context, { row: 1, name: 'width' })).toBeUndefined();
  });
});

test('sayLength writes in the unit of the draft', () => {
  expect(sayLength(stashContext(), 8.5, 10)).toBe('8½ × 10\u00a0in');
});
