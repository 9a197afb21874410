import { expect, test, vi } from 'vitest';
import { choiceList } from '../../../client/fields/choice-list.ts';
import { find, renderFresh } from '../../support/render.ts';

const CHOICES = [
  ['lap', 'Lap'],
  ['queen', 'Queen'],
] as const;
const FIELD = {
  id: 'size',
  label: 'Size',
  choices: CHOICES,
  chosen: 'queen',
  onChoose: () => {},
} as const;

test('choiceList shows its labels and what is chosen', () => {
  const list = find<HTMLSelectElement>(renderFresh(choiceList(FIELD)), 'select');
  expect([...list.options].map(({ text }) => text)).toEqual(['Lap', 'Queen']);
  expect(list.selectedIndex).toBe(1);
  expect(list.labels[0]?.textContent).toBe('Size');
});

test('choiceList tells the value that was chosen', () => {
  const onChoose = vi.fn();
  const list = find<HTMLSelectElement>(renderFresh(choiceList({ ...FIELD, onChoose })), 'select');
  list.selectedIndex = 0;
  list.dispatchEvent(new Event('change'));
  expect(onChoose).toHaveBeenCalledExactlyOnceWith('lap');
});
