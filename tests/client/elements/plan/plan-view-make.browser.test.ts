import { describe, expect, test } from 'vitest';
import type { Draft } from '../../../../client/data/draft.ts';
import { blocksView, clothView } from '../../../../client/elements/plan/plan-view-make.ts';
import { watchContext } from '../../../support/plan-context.ts';
import { planThrow } from '../../../support/plan-throw.ts';
import { find, readText, renderFresh } from '../../../support/render.ts';

describe('blocksView', () => {
  test('blocksView lets the best fit be chosen until a cut is', () => {
    const root = renderFresh(blocksView(watchContext()));
    expect(readText(root, '.chip:has(:checked)')).toBe('Best fit');
    const cut = renderFresh(blocksView(watchContext({ draft: { 'block.cut': '8' } })));
    expect(readText(cut, '.chip:has(:checked)')).toBe('8');
  });

  test('blocksView sets the cut, and takes it back', () => {
    const context = watchContext();
    find(renderFresh(blocksView(context)), '.chip:last-child input').click();
    expect(context.act.set).toHaveBeenLastCalledWith('block.cut', '12');
    const cut = watchContext({ draft: { 'block.cut': '8' } });
    find(renderFresh(blocksView(cut)), '.chip input').click();
    expect(cut.act.set).toHaveBeenLastCalledWith('block.cut', undefined);
  });

  test('blocksView opens where a fault is hidden', () => {
    const isOpen = (path: string[]) => {
      const faults = [{ code: 'empty', path }] as const;
      return find<HTMLDetailsElement>(renderFresh(blocksView(watchContext({ faults }))), 'details')
        .open;
    };
    expect(isOpen(['block', 'seam'])).toBe(true);
    expect(isOpen(['target', 'width'])).toBe(false);
  });

  test('blocksView offers metric cuts in centimetres', () => {
    const context = watchContext({ draft: { unit: 'cm' }, answer: planThrow({ unit: 'cm' }) });
    expect(readText(renderFresh(blocksView(context)), '.chip:nth-child(2)')).toBe('15');
  });
});

describe('clothView', () => {
  test('clothView shows a block of each print and counts them', () => {
    const root = renderFresh(clothView(watchContext()));
    expect(root.querySelectorAll('.swatches svg')).toHaveLength(4);
    expect(readText(root, 'output')).toBe('4');
  });

  test('clothView shows no block of a print that none is left for', () => {
    const request = { target: { columns: 1, rows: 2 }, block: { cut: 8 } };
    const root = renderFresh(clothView(watchContext({ answer: planThrow(request) })));
    expect(readText(root, 'output')).toBe('4');
    expect(root.querySelectorAll('.swatches svg')).toHaveLength(2);
  });

  test('clothView takes a print more or fewer, and never none', () => {
    const context = watchContext();
    const [fewer, more] = renderFresh(clothView(context)).querySelectorAll('button');
    more?.click();
    expect(context.act.set).toHaveBeenLastCalledWith('layers.0.prints', '5');
    fewer?.click();
    expect(context.act.set).toHaveBeenLastCalledWith('layers.0.prints', '3');
    const one = watchContext({ draft: { ...context.state.draft, 'layers.0.prints': '1' } });
    expect(renderFresh(clothView(one)).querySelector('button')?.disabled).toBe(true);
  });

  test('clothView puts a middle in', () => {
    const context = watchContext();
    const list = find<HTMLSelectElement>(renderFresh(clothView(context)), '#middle');
    list.selectedIndex = [...list.options].findIndex(({ text }) => text === 'Cotton batting');
    list.dispatchEvent(new Event('change'));
    expect(context.act.replace.mock.lastCall?.[0]).toMatchObject({
      'layers.1.role': 'middle',
      'layers.1.fabric': 'cotton-batting',
      'layers.2.role': 'backing',
    });
  });

  test('clothView shows the usual cloth of a layer that names none, and none for a layer that is not there', () => {
    const middle = (draft: Draft) => {
      const root = renderFresh(clothView(watchContext({ draft })));
      return find<HTMLSelectElement>(root, '#middle').selectedOptions[0]?.text;
    };
    const draft: Draft = { 'layers.0.role': 'top', 'layers.1.role': 'middle' };
    expect(middle({ ...draft, 'layers.2.role': 'backing' })).toBe('Cotton batting');
    expect(middle({ 'layers.0.role': 'top', 'layers.1.role': 'backing' })).toBe('None');
  });

  test('clothView offers batting for the middle alone', () => {
    const root = renderFresh(clothView(watchContext()));
    const names = (id: string) =>
      [...find<HTMLSelectElement>(root, id).options].map(({ text }) => text);
    expect(names('#top').some((name) => name.includes('batting'))).toBe(false);
    expect(names('#middle')).toEqual(expect.arrayContaining(['None', 'Flannel', 'Cotton batting']));
  });

  test('clothView says which cloth is washed before cutting and whether blocks are turned', () => {
    const context = watchContext();
    const boxes = renderFresh(clothView(context)).querySelectorAll<HTMLInputElement>(
      '[type=checkbox]',
    );
    boxes[1]?.click();
    expect(context.act.set).toHaveBeenLastCalledWith('layers.1.prewashed', 'true');
    boxes[2]?.click();
    expect(context.act.set).toHaveBeenLastCalledWith('grain', 'aligned');
  });
});
