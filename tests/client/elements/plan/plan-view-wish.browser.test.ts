import { describe, expect, test } from 'vitest';
import type { PlanState } from '../../../../client/elements/plan/plan-state.ts';
import { wishView } from '../../../../client/elements/plan/plan-view-wish.ts';
import { watchContext } from '../../../support/plan-context.ts';
import { find, renderFresh, type } from '../../../support/render.ts';

const show = (change?: Partial<PlanState>) => {
  const context = watchContext(change);
  return { root: renderFresh(wishView(context)), act: context.act };
};
const labels = (root: ParentNode) =>
  [...root.querySelectorAll('.fields label')].map((label) => label.textContent);
const choose = (root: ParentNode, selector: string, label: string) => {
  const list = find<HTMLSelectElement>(root, selector);
  list.selectedIndex = [...list.options].findIndex(({ text }) => text === label);
  list.dispatchEvent(new Event('change'));
};

describe('wishView', () => {
  test('wishView shows what a named size was understood as', () => {
    const { root } = show();
    const values = [...root.querySelectorAll<HTMLInputElement>('[inputmode]')].map(
      ({ value }) => value,
    );
    expect(values).toEqual(['50', '60']);
  });

  test('wishView makes a named size one’s own when it is typed over', () => {
    const { root, act } = show();
    type(root, '#target-width', '52');
    expect(act.replace.mock.lastCall?.[0]).toMatchObject({
      'target.width': '52',
      'target.height': '60',
    });
    expect(act.replace.mock.lastCall?.[0]).not.toHaveProperty('target.size');
  });

  test('wishView types into a size of one’s own', () => {
    const { root, act } = show({ draft: { 'target.width': '40', 'target.height': '50' } });
    type(root, '#target-height', '5');
    expect(act.edit).toHaveBeenCalledExactlyOnceWith('target.height', '5');
  });

  test('wishView asks for what a bed or a count of blocks needs', () => {
    const bed = show({ draft: { 'target.bed.width': '60', 'target.bed.length': '80' } });
    expect(labels(bed.root)).toEqual([
      'Size',
      'Mattress width',
      'Mattress length',
      'Hang at the sides',
      'Hang at the foot',
    ]);
    const grid = show({ draft: { 'target.columns': '5', 'target.rows': '6' } });
    expect(labels(grid.root)).toEqual(['Size', 'Blocks across', 'Blocks down']);
  });

  test('wishView chooses a size and a region', () => {
    const { root, act } = show();
    choose(root, '#kind', 'Queen');
    expect(act.replace.mock.lastCall?.[0]).toMatchObject({ 'target.size': 'queen' });
    choose(root, '#region', 'UK');
    expect(act.set).toHaveBeenCalledExactlyOnceWith('target.region', 'uk');
  });

  test('wishView understands words on a press and on Enter', () => {
    const { root, act } = show();
    type(root, '#words', 'a lap quilt');
    expect(act.say).toHaveBeenCalledExactlyOnceWith('a lap quilt');
    find(root, '.go').click();
    find(root, '#words').dispatchEvent(new KeyboardEvent('keydown', { key: 'Enter' }));
    find(root, '#words').dispatchEvent(new KeyboardEvent('keydown', { key: 'a' }));
    expect(act.understand).toHaveBeenCalledTimes(2);
  });

  test('wishView switches the unit', () => {
    const { root, act } = show();
    find(root, 'input[name=unit]:not(:checked)').click();
    expect(act.measureIn).toHaveBeenCalledExactlyOnceWith('cm');
  });
});
