import { html } from 'lit';
import { expect, test } from 'vitest';
import { lockView } from '../../../client/fields/lock-view.ts';
import { find, readText, renderFresh } from '../../support/render.ts';

const body = html`<select><option>8</option></select>`;

test('lockView lets what the page has set be read and not changed, and says why', () => {
  const root = renderFresh(lockView('Set by this page', body));
  expect(find(root, 'select').matches(':disabled')).toBe(true);
  expect(readText(root, 'legend')).toBe('Set by this page');
});

test('lockView leaves all else as it is', () => {
  const root = renderFresh(lockView(false, body));
  expect(find(root, 'select').matches(':disabled')).toBe(false);
  expect(root.querySelector('legend')).toBeNull();
});
