import { html } from 'lit';
import { expect, test, vi } from 'vitest';
import { drawFractions } from '../../../client/fields/draw-fractions.ts';
import { find, renderFresh } from '../../support/render.ts';

test('drawFractions puts in an eighth as if it had been typed, behind what was', () => {
  const onInput = vi.fn();
  const root = renderFresh(
    html`<div @input=${onInput}><input value="8 1/4" placeholder="3" /></div><p></p>`,
  );
  const input = find<HTMLInputElement>(root, 'input');
  drawFractions(find(root, 'p'), input);
  drawFractions(find(root, 'p'), input);
  expect(root.querySelectorAll('button')).toHaveLength(7);
  find(root, 'button').click();
  expect(input.value).toBe('8⅛');
  input.value = '';
  find(root, 'button:last-child').click();
  expect(input.value).toBe('3⅞');
  expect(onInput).toHaveBeenCalledTimes(2);
});
