import { expect, test, vi } from 'vitest';

test('embed-kits.ts registers the element once, however often it is loaded', async () => {
  const define = vi.spyOn(customElements, 'define');
  await import('../../client/embed-kits.ts');
  const { KitsElement } = await import('../../client/elements/kits/kits-element.ts');
  expect(customElements.get('ragbloom-kits')).toBe(KitsElement);
  const again = '../../client/embed-kits.ts?again';
  await import(/* @vite-ignore */ again);
  expect(define.mock.calls.filter(([name]) => name === 'ragbloom-kits')).toHaveLength(1);
});
