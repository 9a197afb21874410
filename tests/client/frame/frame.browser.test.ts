import { expect, test } from 'vitest';

test('the script of a frame tells the page around it how high it is', async () => {
  const heard = new Promise<unknown>((resolve) => {
    parent.addEventListener('message', ({ data }) => {
      if ((data as { type?: string } | null)?.type === 'ragbloom-height') resolve(data);
    });
  });
  await import('../../../client/frame/frame.ts');
  expect(await heard).toMatchObject({ type: 'ragbloom-height', height: expect.any(Number) });
});
