import { html } from 'lit';
import { expect, test } from 'vitest';
import { sheetView } from '../../../client/fields/sheet-view.ts';
import { find, readText, renderFresh } from '../../support/render.ts';

test('sheetView(part, title, body, aside) is a part of the element with its title', () => {
  const root = renderFresh(sheetView('work', 'The work', html`<p>Sew</p>`, html`<i>soon</i>`));
  expect(find(root, 'section').getAttribute('part')).toBe('work');
  expect(readText(root, 'h2')).toBe('The work');
  expect(readText(root, 'header')).toBe('The worksoon');
  expect(readText(root, 'section > p')).toBe('Sew');
});
