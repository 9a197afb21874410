import { describe, expect, test } from 'vitest';
import { askView } from '../../../../client/elements/layout/layout-view-ask.ts';
import { isUnder } from '../../../../client/host/is-under.ts';
import { layoutContext, SMALL } from '../../../support/layout-context.ts';
import { find, renderFresh, type } from '../../../support/render.ts';

describe('askView', () => {
  test('askView shows even counts where none is typed, and makes counts of all with the first', () => {
    const context = layoutContext();
    const root = renderFresh(askView(context));
    expect(find<HTMLInputElement>(root, '#count-B').placeholder).toBe('2');
    type(root, '#count-A', '4');
    const counts = { 'prints.0.count': '4', 'prints.1.count': '2', 'prints.2.count': '2' };
    expect(context.act.type).toHaveBeenCalledWith('prints.0.count', { ...SMALL, ...counts });
  });

  test('askView shares evenly again once the last count is emptied', () => {
    const counts = { 'prints.0.count': '2', 'prints.1.count': '', 'prints.2.count': '' };
    const context = layoutContext(SMALL, {});
    const typed = { ...context, status: { ...context.status, draft: { ...SMALL, ...counts } } };
    type(renderFresh(askView(typed)), '#count-A', '');
    expect(context.act.type).toHaveBeenCalledWith('prints.0.count', SMALL);
  });

  test('askView names and colours a print without anything moving', () => {
    const context = layoutContext();
    const root = renderFresh(askView(context));
    type(root, '#name-A', 'Fern');
    const color = find<HTMLInputElement>(root, 'input[type=color]');
    expect(color.ariaLabel).toBe('Print A, colour');
    color.value = '#123456';
    color.dispatchEvent(new Event('change'));
    expect(context.act.name).toHaveBeenNthCalledWith(1, 'prints.0.id', {
      ...SMALL,
      'prints.0.id': 'Fern',
    });
    expect(context.act.name).toHaveBeenNthCalledWith(2, 'prints.0.color', {
      ...SMALL,
      'prints.0.color': '#123456',
    });
  });

  test('askView takes a print more and a print less', () => {
    const context = layoutContext();
    const root = renderFresh(askView(context));
    find(root, '[aria-label="One print more"]').click();
    find(root, '[aria-label="One print fewer"]').click();
    const [more, fewer] = (context.act.choose as unknown as { mock: { calls: object[][] } }).mock
      .calls;
    expect(more?.[0]).toMatchObject({ 'prints.3.id': 'D' });
    expect(fewer?.[0]).not.toHaveProperty(['prints.2.id']);
  });

  test('askView does not ask what the host has locked', () => {
    const locked = ['pattern', 'touch', 'prints'];
    const isLocked = (path: string) => isUnder(path, locked);
    const root = renderFresh(askView({ ...layoutContext(), isLocked }));
    expect(root.querySelector('select, [type=radio], [aria-label="One print more"]')).toBeNull();
    expect(find<HTMLInputElement>(root, '[type=color]').disabled).toBe(true);
    expect(find<HTMLInputElement>(root, '#columns').readOnly).toBe(false);
  });

  test.each([
    ['prints.1.id', [false, true, false]],
    ['prints.1.count', [false, false, true]],
    ['prints.1.color', [true, false, false]],
    ['prints.1', [true, true, true]],
  ])('askView holds %s alone, and takes no print more or less', (place, held) => {
    const isLocked = (path: string) => isUnder(path, [place]);
    const root = renderFresh(askView({ ...layoutContext(), isLocked }));
    const read = (letter: string) => [
      find<HTMLInputElement>(root, `[aria-label="Print ${letter}, colour"]`).disabled,
      find<HTMLInputElement>(root, `#name-${letter}`).readOnly,
      find<HTMLInputElement>(root, `#count-${letter}`).readOnly,
    ];
    expect(read('B')).toEqual(held);
    expect(read('A')).toEqual([false, false, false]);
    expect(root.querySelector('[aria-label^="One print"]')).toBeNull();
  });
});
