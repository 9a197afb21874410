import { expect, test, vi } from 'vitest';
import { watchRoom } from '../../../../client/elements/layout/watch-room.ts';

test('watchRoom tells the width of an element, and again when it is another', async () => {
  const tell = vi.fn();
  const watch = watchRoom(tell);
  const box = document.createElement('div');
  document.body.replaceChildren(box);
  box.style.width = '300px';
  watch(box);
  await expect.poll(() => tell.mock.lastCall).toEqual([300]);
  box.style.width = '200px';
  await expect.poll(() => tell.mock.lastCall).toEqual([200]);
  watch(undefined);
  box.style.width = '100px';
  await new Promise((done) => requestAnimationFrame(() => requestAnimationFrame(done)));
  expect(tell.mock.lastCall).toEqual([200]);
});
