import { expect, test, vi } from 'vitest';
import { nameField } from '../../../../client/elements/layout/name-field.ts';
import { find, renderFresh, type } from '../../../support/render.ts';

const plain = {
  id: 'name-A',
  label: 'Print A, name',
  value: 'Moss',
  isLocked: false,
  reason: 'Set',
};

test('nameField tells what is typed, letter by letter', () => {
  const onInput = vi.fn();
  const root = renderFresh(nameField({ ...plain, onInput }));
  type(root, 'input', '8½ Moss');
  expect(onInput).toHaveBeenCalledWith('8½ Moss');
  expect(find<HTMLInputElement>(root, 'input').labels?.[0]?.textContent).toBe('Print A, name');
});

test('nameField that is locked can be read and not changed, and says why', () => {
  const root = renderFresh(nameField({ ...plain, isLocked: true, onInput: () => undefined }));
  const input = find<HTMLInputElement>(root, 'input');
  expect([input.readOnly, input.title, input.value]).toEqual([true, 'Set', 'Moss']);
});
