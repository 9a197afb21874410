import { expect, test, vi } from 'vitest';

test('embed.ts registers the element once, however often it is loaded', async () => {
  const define = vi.spyOn(customElements, 'define');
  await import('../../client/embed.ts');
  const { PlanElement } = await import('../../client/elements/plan/plan-element.ts');
  expect(customElements.get('ragbloom-plan')).toBe(PlanElement);
  const again = '../../client/embed.ts?again';
  await import(/* @vite-ignore */ again);
  expect(define.mock.calls.filter(([name]) => name === 'ragbloom-plan')).toHaveLength(1);
});
