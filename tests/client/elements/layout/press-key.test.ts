import { describe, expect, test, vi } from 'vitest';
import { pressKey, pressUndo } from '../../../../client/elements/layout/press-key.ts';

const makeActions = () => ({
  ...{ go: vi.fn(), tap: vi.fn(), pin: vi.fn(), letGo: vi.fn() },
  ...{ undo: vi.fn(), redo: vi.fn() },
});
const makeKey = (key: string, change: object = {}) => {
  const plain = { key, ctrlKey: false, metaKey: false, shiftKey: false };
  return { ...plain, ...change, preventDefault: vi.fn() } as unknown as KeyboardEvent;
};
const standing = { at: 4, columns: 3, rows: 3 };

describe('pressKey', () => {
  test.each([
    ['ArrowUp', 'go', [1]],
    ['Enter', 'tap', [4]],
    ['p', 'pin', [4]],
    ['Escape', 'letGo', []],
  ] as const)('pressKey(%s) does %s, and keeps the key from the browser', (name, deed, given) => {
    const act = makeActions();
    const key = makeKey(name);
    pressKey(key, standing, act);
    expect(act[deed].mock.calls).toEqual([given]);
    expect(key.preventDefault).toHaveBeenCalledOnce();
  });

  test('pressKey leaves Tab to the browser', () => {
    const act = makeActions();
    const key = makeKey('Tab');
    pressKey(key, standing, act);
    expect(Object.values(act).every((deed) => deed.mock.calls.length === 0)).toBe(true);
    expect(key.preventDefault).not.toHaveBeenCalled();
  });
});

describe('pressUndo', () => {
  test('pressUndo undoes with Ctrl and Z, or the key that stands for Ctrl, and does again with Shift', () => {
    const act = makeActions();
    pressUndo(makeKey('z', { ctrlKey: true }), act);
    pressUndo(makeKey('z', { metaKey: true }), act);
    pressUndo(makeKey('Z', { ctrlKey: true, shiftKey: true }), act);
    expect([act.undo.mock.calls.length, act.redo.mock.calls.length]).toEqual([2, 1]);
  });

  test('pressUndo leaves a bare Z alone, and Ctrl with another letter', () => {
    const act = makeActions();
    pressUndo(makeKey('z'), act);
    pressUndo(makeKey('p', { ctrlKey: true }), act);
    expect(act.undo).not.toHaveBeenCalled();
  });
});
