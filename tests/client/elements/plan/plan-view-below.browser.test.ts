import { html } from 'lit';
import { afterEach, describe, expect, test } from 'vitest';
import { startBelow } from '../../../../client/elements/plan/plan-view-below.ts';
import { watchContext } from '../../../support/plan-context.ts';
import { find, readText, renderFresh } from '../../../support/render.ts';

const host = document.createElement('div');
const root = host.attachShadow({ mode: 'open' });

describe('startBelow', () => {
  afterEach(() => {
    root.adoptedStyleSheets = [];
  });

  test('startBelow shows what the quilt is made of before there is a plan, and the sheets with it', async () => {
    const { view } = await startBelow(root, 'en');
    const parts = (change?: { readonly answer: undefined }) =>
      [...renderFresh(view(watchContext(change), false)).querySelectorAll('[part]')].map((part) =>
        part.getAttribute('part'),
      );
    expect(parts({ answer: undefined })).toEqual(['blocks', 'cloth']);
    expect(parts()).toEqual([
      ...['blocks', 'cloth', 'shopping', 'facts', 'cautions', 'work', 'grounds'],
    ]);
  });

  test('startBelow dresses the element once, however often it is fetched', async () => {
    await startBelow(root, 'en');
    await startBelow(root, 'de');
    expect(root.adoptedStyleSheets).toHaveLength(1);
  });

  test('startBelow speaks the language that it is asked for', async () => {
    const { view } = await startBelow(root, 'de');
    expect(readText(renderFresh(view(watchContext(), false)), '.work h2')).toBe('Die Arbeit');
  });

  test('startBelow leads on with the very plan on a page of ours, and from there alone', async () => {
    const { view } = await startBelow(root, 'en');
    const ways = (isOurs: boolean) =>
      [...renderFresh(view(watchContext(), isOurs)).querySelectorAll('.ways a')].map((way) =>
        way.getAttribute('href'),
      );
    expect(ways(false)).toEqual([]);
    const [counter, compare, layout] = ways(true);
    expect(counter).toMatch(/^\/counter\?target\.size=throw/);
    expect(compare).toMatch(/^\/compare\?a=target\.size%3Dthrow/);
    expect(layout).toMatch(/^\/layout\?columns=5&rows=6&.*#[A-D]{5}(-[A-D]{5}){5}$/);
  });

  test('startBelow prints when the button is pressed', async () => {
    const { view } = await startBelow(root, 'en');
    const context = watchContext();
    find(renderFresh(view(context, false)), '.sheets > .part > button').click();
    expect(context.act.print).toHaveBeenCalledOnce();
  });

  test('startBelow lays over the plan what was asked for', async () => {
    const { view } = await startBelow(root, 'en');
    const shown = renderFresh(view(watchContext({ aside: () => html`<dialog></dialog>` }), false));
    expect(shown.querySelector('dialog')).not.toBeNull();
  });
});
