import { describe, expect, test } from 'vitest';
import { listView } from '../../../../client/elements/counter/counter-view-list.ts';
import { setCounter } from '../../../support/counter-scene.ts';
import { find, readText, renderFresh } from '../../../support/render.ts';

function show(scene: Parameters<typeof setCounter>[0]) {
  const { context, done } = setCounter(scene);
  return { root: renderFresh(listView(context)), done };
}

describe('listView', () => {
  test('listView has a row for each cloth: its tick, its name, what to ask for and what it costs', () => {
    const { root, done } = show({ shop: { '4.price': '12.99', '1.got': '1' } });
    expect(root.querySelectorAll('li')).toHaveLength(5);
    expect(readText(root, 'li:last-child .cloth')).toBe('Flannel Backing 2⅜ yd $30.85');
    expect(find<HTMLInputElement>(root, 'li:nth-child(2) input').checked).toBe(true);
    find(root, 'li:nth-child(3) input').click();
    find(root, 'li:nth-child(4) .cloth').click();
    expect(done).toEqual([
      ['tick', 2, true],
      ['take', 3],
    ]);
  });

  test('listView shares where the browser can, shows a code, and goes to another quilt', () => {
    const { root, done } = show({ canShare: true });
    for (const button of root.querySelectorAll<HTMLElement>('.chips button')) button.click();
    expect(done.map(([name]) => name)).toEqual(['share', 'showCode', 'leave']);
    expect(show({}).root.querySelectorAll('.chips button')).toHaveLength(2);
  });

  test('listView draws a code black on white, and says where the list is too long for one', () => {
    const { root } = show({ state: { code: { path: 'M4 4h1v1h-1z', side: 9 } } });
    expect(find(root, 'svg').getAttribute('viewBox')).toBe('0 0 9 9');
    expect(find(root, 'rect').getAttribute('fill')).toBe('#fff');
    expect(readText(show({ state: { code: 'long' } }).root, 'div + p')).toMatch(/too long/);
    const unfetched = show({ state: { code: 'unfetched' } });
    expect(readText(unfetched.root, 'div + p')).toMatch(/could not be fetched/);
  });
});
