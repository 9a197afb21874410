import { html } from 'lit';
import { expect, test } from 'vitest';
import { openAside } from '../../../../client/elements/plan/open-aside.ts';
import { watchContext } from '../../../support/plan-context.ts';
import { planThrow } from '../../../support/plan-throw.ts';
import { renderFresh } from '../../../support/render.ts';

test('openAside lays over the plan what was fetched', async () => {
  const context = watchContext();
  const aside = () => html`<p>Here</p>`;
  await openAside(context, async () => aside);
  expect(context.act.lay).toHaveBeenCalledExactlyOnceWith(aside);
});

test('openAside says so where it cannot be fetched', async () => {
  const context = watchContext();
  await openAside(context, () => Promise.reject(new Error('offline')));
  const [missing] = context.act.lay.mock.calls[0] ?? [];
  const root = renderFresh(missing?.(context, planThrow()));
  expect(root.querySelector('[role=alert]')?.textContent).toContain('could not be fetched');
});
