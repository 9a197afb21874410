import { html } from 'lit';
import { afterEach, expect, test, vi } from 'vitest';
import { fractionPlace, offerFractions } from '../../../client/fields/fraction-place.ts';
import { find, renderFresh } from '../../support/render.ts';
import { touchField } from '../../support/touch-field.ts';

const field = () =>
  renderFresh(html`<input id="cut" @focus=${offerFractions} />${fractionPlace('cut', 'Eighths')}`);

afterEach(() => vi.unstubAllGlobals());

test('fractionPlace is a group that says what it is for, empty until a finger comes', async () => {
  const root = field();
  expect(find(root, '[role=group]').ariaLabel).toBe('Eighths');
  expect(find(root, '.fractions').childElementCount).toBe(0);
  await touchField(root);
  find(root, '.fractions button').click();
  expect(find<HTMLInputElement>(root, 'input').value).toBe('⅛');
});

test('offerFractions fetches nothing for a mouse, or where there is no place for them', async () => {
  const root = field();
  find(root, 'input').focus();
  const bare = renderFresh(html`<input id="cut" @focus=${offerFractions} />`);
  vi.stubGlobal('matchMedia', () => ({ matches: true }));
  find(bare, 'input').focus();
  await new Promise((done) => setTimeout(done, 50));
  expect([root, bare].map((one) => one.querySelector('button'))).toEqual([null, null]);
});
