import { expect, test } from 'vitest';
import { WashElement } from '../../client/elements/wash/wash-element.ts';

test('embed-wash registers the element once, however often it is loaded', async () => {
  await import('../../client/embed-wash.ts');
  expect(customElements.get('ragbloom-wash')).toBe(WashElement);
  const again = '../../client/embed-wash.ts?again';
  await import(/* @vite-ignore */ again);
  expect(customElements.get('ragbloom-wash')).toBe(WashElement);
});
