import { expect, test, vi } from 'vitest';
import { fractionChips } from '../../../client/fields/fraction-chips.ts';
import { find, renderFresh } from '../../support/render.ts';

test('fractionChips offer the seven eighths in order', () => {
  const chosen = vi.fn();
  const root = renderFresh(fractionChips(chosen));
  for (const button of root.querySelectorAll('button')) button.click();
  expect(chosen.mock.calls.flat()).toEqual(['⅛', '¼', '⅜', '½', '⅝', '¾', '⅞']);
});

test('fractionChips leave the focus where it is', () => {
  const root = renderFresh(fractionChips(() => {}));
  const press = new PointerEvent('pointerdown', { bubbles: true, cancelable: true });
  expect(find(root, 'button').dispatchEvent(press)).toBe(false);
});
