import { expect, test, vi } from 'vitest';
import { checkBox } from '../../../client/fields/check-box.ts';
import { find, renderFresh } from '../../support/render.ts';

test('checkBox is labelled, described and set', () => {
  const root = renderFresh(
    checkBox({ label: 'Cut', isOn: true, onChange: () => {}, describedBy: 'more' }),
  );
  const box = find<HTMLInputElement>(root, 'input');
  expect([
    box.checked,
    box.labels?.[0]?.textContent?.trim(),
    box.getAttribute('aria-describedby'),
  ]).toEqual([true, 'Cut', 'more']);
});

test('checkBox tells whether it is so now', () => {
  const onChange = vi.fn();
  find(renderFresh(checkBox({ label: 'Cut', isOn: true, onChange })), 'input').click();
  expect(onChange).toHaveBeenCalledExactlyOnceWith(false);
});
