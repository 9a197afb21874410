import { describe, expect, test, vi } from 'vitest';
import { numberField } from '../../../client/fields/number-field.ts';
import { find, readText, renderFresh, type } from '../../support/render.ts';

const FIELD = { id: 'cut', label: 'Cut', value: '8½', unit: 'in', onInput: () => {} };

describe('numberField', () => {
  test('numberField is text with the keyboard of figures, its label and its unit tied to it', () => {
    const root = renderFresh(numberField(FIELD));
    const input = find<HTMLInputElement>(root, 'input');
    expect([input.type, input.inputMode, input.value]).toEqual(['text', 'decimal', '8½']);
    expect(input.labels?.[0]?.textContent).toBe('Cut');
    expect(input.getAttribute('aria-describedby')?.split(' ')).toContain(find(root, '.unit').id);
    expect(input.hasAttribute('aria-invalid')).toBe(false);
  });

  test('numberField tells what was typed, letter by letter', () => {
    const onInput = vi.fn();
    const root = renderFresh(numberField({ ...FIELD, onInput }));
    type(root, 'input', '21,5 cm or so');
    expect(onInput).toHaveBeenCalledExactlyOnceWith('21,5 cm or so');
  });

  test('numberField ties its fault to the input', () => {
    const root = renderFresh(numberField({ ...FIELD, fault: 'Type a number.' }));
    const input = find(root, 'input');
    expect(input.getAttribute('aria-invalid')).toBe('true');
    expect(input.getAttribute('aria-describedby')?.split(' ')).toContain(find(root, '.fault').id);
    expect(readText(root, '.fault')).toBe('Type a number.');
  });

  test('numberField offers eighths that change the fraction of what stands there', () => {
    const onInput = vi.fn();
    const root = renderFresh(numberField({ ...FIELD, fractions: 'Fractions', onInput }));
    find(root, '.fractions button:nth-child(3)').click();
    expect(onInput).toHaveBeenCalledExactlyOnceWith('8⅜');
  });

  test('numberField takes an eighth beside the usual figure where it is empty', () => {
    const onInput = vi.fn();
    const field = { ...FIELD, value: '', placeholder: '12', fractions: 'Fractions', onInput };
    find(renderFresh(numberField(field)), '.fractions button').click();
    expect(onInput).toHaveBeenCalledExactlyOnceWith('12⅛');
  });
});
