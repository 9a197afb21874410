import { describe, expect, test } from 'vitest';
import { counterView } from '../../../../client/elements/counter/counter-view.ts';
import { setCounter } from '../../../support/counter-scene.ts';
import { find, readText, renderFresh } from '../../../support/render.ts';

function show(scene: Parameters<typeof setCounter>[0]) {
  const { context, done } = setCounter(scene);
  return { root: renderFresh(counterView(context)), done };
}

describe('counterView', () => {
  test('counterView begins with what is needed', () => {
    expect(readText(show({ question: '' }).root, 'h2')).toBe('What do you need?');
  });

  test.each([
    ['bolt', '.widths'],
    ['left', '#left'],
    ['other', '#otherPrice'],
    ['list', '.list'],
  ] as const)('counterView in %s shows %s', (mode, selector) => {
    const { root } = show({ state: { mode } });
    expect(root.querySelector(`.panel ${selector}`)).not.toBeNull();
    expect(root.querySelectorAll('.modes input')).toHaveLength(4);
  });

  test('counterView ticks the cloth in hand and goes to the next, and no farther than the last', () => {
    const { root, done } = show({ shop: { at: '4' } });
    const [before, after] = root.querySelectorAll<HTMLButtonElement>('.bar button');
    expect([before?.disabled, after?.disabled]).toEqual([false, true]);
    before?.click();
    find(root, '.tick input').click();
    expect(done).toEqual([
      ['take', 3],
      ['tick', 4, true],
    ]);
    expect(show({ question: 'cut=8.5&count=40' }).root.querySelector('.bar button')).toBeNull();
  });

  test('counterView has a place for the announcement before anything is said', () => {
    expect(
      readText(show({ state: { said: 'Print A: ask for a yard.' } }).root, '[role=status]'),
    ).toBe('Print A: ask for a yard.');
    expect(show({}).root.querySelector('[role=status][aria-atomic=true]')).not.toBeNull();
  });
});
