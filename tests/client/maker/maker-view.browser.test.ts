import { render } from 'lit';
import { expect, test, vi } from 'vitest';
import { startState } from '../../../client/maker/maker-state.ts';
import { makerView } from '../../../client/maker/maker-view.ts';
import { writeSnippets } from '../../../client/maker/write-snippets.ts';
import { en } from '../../../client/text/maker/en.ts';

const root = document.createElement('div');
document.body.append(root);

/** Snippets are made for a home that nobody is at, and the preview stays blank. */
function draw(change = {}) {
  const state = { ...startState('size'), ...change };
  const act = { choose: vi.fn(), change: vi.fn(), copy: vi.fn() };
  const snippets = { ...writeSnippets(state, 'https://a.test'), preview: 'about:blank' };
  render(makerView({ state, snippets, height: 300, said: 'Copied.', words: en, act }), root);
  return act;
}

test('makerView offers to fix only what says something', () => {
  draw({ values: { unit: 'cm' } });
  const boxes = [...root.querySelectorAll('label.check')].map((label) => label.textContent?.trim());
  expect(boxes).toContain('Fix: Measured in');
  expect(boxes).not.toContain('Fix: Size');
});

test('makerView hands on what is typed, ticked and chosen', () => {
  const act = draw();
  const select = root.querySelector<HTMLSelectElement>('fieldset.ask select');
  if (select === null) throw new Error('There is nothing to choose from.');
  select.value = 'cm';
  select.dispatchEvent(new Event('change'));
  expect(act.change).toHaveBeenCalledWith({ values: { 'target.size': 'throw', unit: 'cm' } });
  root.querySelector<HTMLElement>('input[value=layout]')?.click();
  expect(act.choose).toHaveBeenCalledWith('layout');
  root.querySelector<HTMLElement>('input[type=checkbox]')?.click();
  expect(act.change).toHaveBeenCalledWith({ locked: ['target.size'] });
});

test('makerView shows a colour only where one is chosen, and copies from the area of its button', () => {
  const act = draw({ colors: { ink: '#112233' } });
  expect(root.querySelectorAll('input[type=color]').length).toBe(1);
  root.querySelector<HTMLElement>('button')?.click();
  expect(act.copy).toHaveBeenCalledWith(root.querySelector('#snippet-script'));
  expect(root.querySelector('[role=status]')?.textContent).toBe('Copied.');
});
