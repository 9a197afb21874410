import { describe, expect, test } from 'vitest';
import { readKey } from '../../../../client/elements/layout/read-key.ts';

const PLAIN = { ctrlKey: false, metaKey: false };
/** The middle of a grid of five across and four down. */
const MIDDLE = { at: 7, columns: 5, rows: 4 };
const read = (key: string, standing = MIDDLE, change: Partial<typeof PLAIN> = {}) =>
  readKey({ key, ...PLAIN, ...change }, standing);
const FAR = { ctrlKey: true };

// The keys of a grid: ARIA Authoring Practices Guide, pattern "Grid", w3.org/WAI/ARIA/apg/patterns/grid.
describe('readKey', () => {
  test.each([
    ['ArrowUp', 2],
    ['ArrowDown', 12],
    ['ArrowLeft', 6],
    ['ArrowRight', 8],
    ['Home', 5],
    ['End', 9],
  ])('readKey(%s) goes from block 7 to block %d', (key, to) => {
    expect(read(key)).toEqual({ kind: 'go', to });
  });

  test('readKey goes to the corners of the grid with Ctrl, or the key that stands for it elsewhere', () => {
    for (const change of [FAR, { metaKey: true }]) {
      expect(read('Home', MIDDLE, change)).toEqual({ kind: 'go', to: 0 });
      expect(read('End', MIDDLE, change)).toEqual({ kind: 'go', to: 19 });
    }
  });

  test.each([
    ['ArrowUp', 0],
    ['ArrowLeft', 0],
    ['ArrowLeft', 10],
    ['ArrowRight', 4],
    ['ArrowRight', 19],
    ['ArrowDown', 19],
  ])('readKey(%s) stays on block %d at the rim, and wraps nowhere', (key, at) => {
    expect(read(key, { ...MIDDLE, at })).toEqual({ kind: 'go', to: at });
  });

  test('readKey takes up, pins and lets go', () => {
    expect([read('Enter'), read(' ')]).toEqual([{ kind: 'tap' }, { kind: 'tap' }]);
    expect([read('p'), read('P')]).toEqual([{ kind: 'pin' }, { kind: 'pin' }]);
    expect(read('Escape')).toEqual({ kind: 'let-go' });
  });

  test('readKey leaves all else to the browser: Tab, letters, printing with Ctrl and P', () => {
    expect(['Tab', 'a', 'F5'].map((key) => read(key))).toEqual([undefined, undefined, undefined]);
    expect(read('p', MIDDLE, FAR)).toBeUndefined();
  });
});
