import { html } from 'lit';
import { expect, test } from 'vitest';
import { fieldView } from '../../../client/fields/field-view.ts';
import { find, readText, renderFresh } from '../../support/render.ts';

const control = ({ id, invalid, by }: { id: string; invalid: unknown; by: string }) =>
  html`<input id=${id} aria-invalid=${invalid} aria-describedby=${by} />`;

test('fieldView labels its control', () => {
  const root = renderFresh(fieldView({ id: 'a', label: 'Width' }, control));
  expect(find<HTMLInputElement>(root, 'input').labels?.[0]?.textContent).toBe('Width');
  expect(root.querySelector('.fault')).toBeNull();
});

test('fieldView says a fault where the control looks for it', () => {
  const root = renderFresh(fieldView({ id: 'a', label: 'Width', fault: 'Too wide.' }, control));
  const ids = find(root, 'input').getAttribute('aria-describedby')?.split(' ') ?? [];
  expect(ids).toContain(find(root, '.fault').id);
  expect(readText(root, '.fault')).toBe('Too wide.');
});
