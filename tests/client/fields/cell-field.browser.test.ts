import { expect, test, vi } from 'vitest';
import { cellField } from '../../../client/fields/cell-field.ts';
import { find, renderFresh, type } from '../../support/render.ts';
import { touchField } from '../../support/touch-field.ts';

const FIELD = { id: 'c', label: 'Swatch 1, before', value: '8 1/4', onInput: () => {} };

test('cellField is called by its row and column, and brings up figures', () => {
  const input = find<HTMLInputElement>(renderFresh(cellField(FIELD)), 'input');
  expect([input.ariaLabel, input.value, input.inputMode]).toEqual([
    'Swatch 1, before',
    '8 1/4',
    'decimal',
  ]);
  expect(input.hasAttribute('aria-invalid')).toBe(false);
});

test('cellField is tied to the sentence that says what is wrong with it', () => {
  const input = find(renderFresh(cellField({ ...FIELD, faultId: 'c-fault' })), 'input');
  expect([input.getAttribute('aria-invalid'), input.getAttribute('aria-describedby')]).toEqual([
    'true',
    'c-fault',
  ]);
});

test('cellField tells what is typed, and an eighth chosen behind the whole part', async () => {
  const onInput = vi.fn();
  const root = renderFresh(cellField({ ...FIELD, fractions: 'Fractions', onInput }));
  type(root, 'input', '9');
  await touchField(root);
  find(root, 'button').click();
  expect(onInput.mock.calls).toEqual([['9'], ['9⅛']]);
});
