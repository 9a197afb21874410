import { expect, test, vi } from 'vitest';
import { choiceChips } from '../../../client/fields/choice-chips.ts';
import { find, readText, renderFresh } from '../../support/render.ts';

const FIELD = {
  name: 'unit',
  legend: 'Measure in',
  choices: [
    ['in', 'in'],
    ['cm', 'cm'],
  ],
  chosen: 'cm',
  onChoose: () => {},
} as const;

test('choiceChips are one group of radio buttons with the chosen one set', () => {
  const root = renderFresh(choiceChips(FIELD));
  const radios = [...root.querySelectorAll('input')];
  expect(radios.map(({ type, name, checked }) => [type, name, checked])).toEqual([
    ['radio', 'unit', false],
    ['radio', 'unit', true],
  ]);
  expect(readText(root, 'legend')).toBe('Measure in');
});

test('choiceChips set none where none is chosen', () => {
  const root = renderFresh(choiceChips({ ...FIELD, chosen: undefined }));
  expect(root.querySelector('input:checked')).toBeNull();
});

test('choiceChips tell what was chosen', () => {
  const onChoose = vi.fn();
  find(renderFresh(choiceChips({ ...FIELD, onChoose })), 'input').click();
  expect(onChoose).toHaveBeenCalledExactlyOnceWith('in');
});
