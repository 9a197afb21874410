import { expect, test, vi } from 'vitest';

test('embed-stash.ts registers the element once, however often it is loaded', async () => {
  const define = vi.spyOn(customElements, 'define');
  await import('../../client/embed-stash.ts');
  const { StashElement } = await import('../../client/elements/stash/stash-element.ts');
  expect(customElements.get('ragbloom-stash')).toBe(StashElement);
  const again = '../../client/embed-stash.ts?again';
  await import(/* @vite-ignore */ again);
  expect(define.mock.calls.filter(([name]) => name === 'ragbloom-stash')).toHaveLength(1);
});
