import { render } from 'lit';
import { afterEach, expect, test, vi } from 'vitest';
import { handOutSheet } from '../../../../client/elements/plan/hand-out-sheet.ts';
import { makeHandOut } from '../../../support/hand-out.ts';
import { watchContext } from '../../../support/plan-context.ts';

afterEach(() => vi.restoreAllMocks());

test('handOutSheet prints once, however often it is drawn, and is out of sight', async () => {
  const print = vi.spyOn(globalThis, 'print').mockImplementation(() => {});
  const done = vi.fn();
  const host = document.createElement('div');
  document.body.replaceChildren(host);
  const root = host.attachShadow({ mode: 'open' });
  const handOut = makeHandOut({}, done);
  const context = watchContext();
  render(handOutSheet(context, handOut), root);
  render(handOutSheet(context, handOut), root);
  await new Promise((soon) => setTimeout(soon));
  expect(print).toHaveBeenCalledOnce();
  const sheet = root.querySelector('.hand-out');
  expect(sheet && getComputedStyle(sheet).visibility).toBe('hidden');
  globalThis.dispatchEvent(new Event('afterprint'));
  expect(done).toHaveBeenCalledOnce();
});
