import { expect, test, vi } from 'vitest';
import { unitChips } from '../../../client/fields/unit-chips.ts';
import { find, renderFresh } from '../../support/render.ts';

test('unitChips has one of two units chosen and tells the other when it is pressed', () => {
  const choose = vi.fn();
  const root = renderFresh(unitChips('Measure in', 'in', choose));
  expect(find<HTMLInputElement>(root, 'label:first-child input').checked).toBe(true);
  find(root, 'label:last-child').click();
  expect(choose).toHaveBeenCalledExactlyOnceWith('cm');
});
