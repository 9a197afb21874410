import { expect, test } from 'vitest';
import { workDetails } from '../../../../client/elements/plan/work-details.ts';
import { watchContext } from '../../../support/plan-context.ts';
import { planThrow } from '../../../support/plan-throw.ts';
import { renderFresh } from '../../../support/render.ts';

const plan = planThrow();
const show = (step: string, answer = plan) =>
  [...renderFresh(workDetails(watchContext(), answer, step)).querySelectorAll('li')].map((item) =>
    (item.textContent ?? '').replace(/\s+/g, ' ').trim(),
  );

test('workDetails lists the stacks by letter', () => {
  expect(show('stack')).toEqual(
    plan.work.stacks.map(({ letter, blocks }) => `${letter} ${blocks}`),
  );
});

test('workDetails lists the rows as they are laid', () => {
  expect(show('join')).toEqual(
    plan.layout.cells.map((cells, at) => `Row ${'ABCDEFGH'[at]} ${[...cells].join(' ')}`),
  );
});

test('workDetails folds very many rows away', () => {
  const long = planThrow({ target: { columns: 2, rows: 30 }, block: { cut: 6 } });
  expect(show('join', long)).toHaveLength(30);
  const root = renderFresh(workDetails(watchContext(), long, 'join'));
  expect(root.querySelector('summary')?.textContent).toBe('Row A – AD');
});

test('workDetails has nothing to add to other steps, nor to a stack of one print', () => {
  expect(show('snip')).toEqual([]);
  const layers = [{ role: 'top', prints: 1 }, { role: 'backing' }] as const;
  expect(show('stack', planThrow({ layers }))).toEqual([]);
});
