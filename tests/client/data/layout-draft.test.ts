import { describe, expect, test } from 'vitest';
import { writeQuery } from '../../../client/data/draft.ts';
import {
  changePrints,
  completeLayout,
  isPinned,
  readPins,
  togglePin,
  writePins,
} from '../../../client/data/layout-draft.ts';
import { computeLayout } from '../../../client/data/layout-on-device.ts';

const CELLS = ['ABC', 'BCA'];
const TWO = { columns: '3', rows: '2', 'prints.0.id': 'Moss', 'prints.1.id': 'Rust' } as const;

describe('completeLayout', () => {
  test('completeLayout leaves alone what a person gave', () => {
    expect(completeLayout(TWO)).toEqual(TWO);
  });

  test('completeLayout makes a question that can be answered of nothing at all', () => {
    const outcome = computeLayout(writeQuery(completeLayout({})));
    expect(outcome.ok && outcome.value.input).toMatchObject({ columns: 5, rows: 6 });
  });

  test('completeLayout gives prints where there is but one', () => {
    expect(completeLayout({ 'prints.0.id': 'Moss' })['prints.1.id']).toBe('B');
  });
});

describe('changePrints', () => {
  test('changePrints adds one named by its letter, or takes the last, and lets counts and pins go', () => {
    const draft = { ...TWO, 'prints.0.count': '2', 'prints.1.count': '4', 'fixed.0': 'A..' };
    expect(changePrints(draft, true)).toEqual({ ...TWO, 'prints.2.id': 'C' });
    expect(changePrints(changePrints(TWO, true), false)).toEqual(TWO);
  });
});

describe('pins', () => {
  test('readPins reads rows in the order of their numbers, beyond nine too', () => {
    const rows = Array.from({ length: 12 }, (_, at) => 'ABCDEFGHIJKL'[at] ?? '');
    const shuffled = Object.fromEntries(rows.map((row, at) => [`fixed.${at}`, row]).toReversed());
    expect(readPins(shuffled)).toEqual(rows);
  });

  test('writePins puts pins for pins, and none at all where none is left', () => {
    const draft = writePins({ ...TWO, 'fixed.0': 'A..', 'fixed.1': '...' }, ['..B', '...']);
    expect(readPins(draft)).toEqual(['..B', '...']);
    expect(writePins(draft, ['...', '...'])).toEqual(TWO);
  });

  test('togglePin pins the block that lies there, and lets it go again', () => {
    const pinned = togglePin(TWO, CELLS, 4);
    expect(readPins(pinned)).toEqual(['...', '.C.']);
    expect(readPins(togglePin(pinned, CELLS, 0))).toEqual(['A..', '.C.']);
    expect(togglePin(pinned, CELLS, 4)).toEqual(TWO);
  });

  test('isPinned knows pins by their place', () => {
    const pins = ['...', '.C.'];
    expect([3, 4, 5].map((place) => isPinned(pins, 3, place))).toEqual([false, true, false]);
    expect(isPinned([], 3, 4)).toBe(false);
  });
});
