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

  test('wishView shows in an empty drop at the foot what the plan uses', () => {
    const foot = (draft: PlanState['draft']) =>
      find<HTMLInputElement>(show({ draft }).root, '#target-bed-footDrop').placeholder;
    const bed = { 'target.bed.width': '60', 'target.bed.length': '80' };
    expect(foot(bed)).toBe('10');
    expect(foot({ ...bed, 'target.bed.drop': '12 1/2' })).toBe('12 1/2');
  });

  test('wishView says whether a size is meant washed or sewn, and lets it be chosen', () => {
    const own = { 'target.width': '40', 'target.height': '50' };
    const washed = show({ draft: own });
    expect(labels(washed.root)).toEqual(['Size', 'Width, washed', 'Length, washed']);
    find(washed.root, 'input[name=at]:not(:checked)').click();
    expect(washed.act.replace).toHaveBeenLastCalledWith({ ...own, 'target.at': 'sewn' });
    const sewn = show({ draft: { ...own, 'target.at': 'sewn' } });
    expect(labels(sewn.root)).toEqual(['Size', 'Width, sewn', 'Length, sewn']);
    find(sewn.root, 'input[name=at]:not(:checked)').click();
    expect(sewn.act.replace).toHaveBeenLastCalledWith(own);
  });

  test('wishView makes a named size one’s own when it is meant as sewn', () => {
    const { root, act } = show({ draft: { 'target.size': 'throw' } });
    find(root, 'input[name=at]:not(:checked)').click();
    expect(act.replace).toHaveBeenLastCalledWith({
      'target.width': '50',
      'target.height': '60',
      'target.at': 'sewn',
    });
  });

  test('wishView offers the sizes of the region, and the one that is chosen', () => {
    const sizes = (draft: PlanState['draft']) =>
      [...find<HTMLSelectElement>(show({ draft }).root, '#kind').options].map(({ text }) => text);
    expect(sizes({ 'target.size': 'throw' })).not.toContain('Super king');
    const uk = { 'target.region': 'uk' } as const;
    expect(sizes({ 'target.size': 'throw', ...uk })).toContain('Super king');
    expect(sizes({ 'target.size': 'throw', ...uk })).not.toContain('Queen');
    expect(sizes({ 'target.size': 'queen', ...uk })).toContain('Queen');
  });

  test.each([
    [{ unit: 'in', target: { width: 40, height: 50 } }, '40 × 50 in'],
    [{ unit: 'cm', target: { size: 'queen' } }, 'Queen'],
    [{ unit: 'in', target: { columns: 5, rows: 6 } }, '5 × 6 blocks'],
  ] as const)('wishView says that %j was read', (wishRead, said) => {
    const { root } = show({ wishRead });
    const words = find(root, '#words-unit').textContent?.replaceAll('\u00a0', ' ');
    expect(words).toBe(`Read as ${said}. Blocks and cloth are set below.`);
    expect(find(root, '#words').getAttribute('aria-describedby')).toContain('words-unit');
  });

  test('wishView says which words of a wish were passed over', () => {
    const wishRead = {
      unit: 'in',
      target: { size: 'queen' },
      passed: ['blue', '40 prints'],
    } as const;
    const { root } = show({ wishRead });
    expect(find(root, '#words-unit').textContent).toContain('Passed over: blue, 40 prints.');
  });

  test('wishView shows the size of the answer in the unit of the fields while another answer is awaited', () => {
    const { root, act } = show({ draft: { 'target.size': 'throw', unit: 'cm' } });
    const sides = ['#target-width', '#target-height'].map(
      (field) => find<HTMLInputElement>(root, field).value,
    );
    expect(sides).toEqual(['127', '152.4']);
    find(root, 'input[name=at]:not(:checked)').click();
    expect(act.replace.mock.lastCall?.[0]).toMatchObject({ 'target.width': '127' });
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
