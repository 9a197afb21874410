import { describe, expect, test, vi } from 'vitest';
import { askView } from '../../../../client/elements/size/size-view-ask.ts';
import { sizeContext } from '../../../support/light-contexts.ts';
import { find, renderFresh, type } from '../../../support/render.ts';

function open(query: string, isLocked = (_path: string) => false) {
  const actions = { type: vi.fn(), choose: vi.fn(), measureIn: vi.fn(), retry: vi.fn() };
  const { context } = sizeContext(query, { act: actions, isLocked });
  return { root: renderFresh(askView(context)), actions };
}

describe('askView of the size', () => {
  test('askView shows the figures of a named size, and typing over them makes it one’s own', () => {
    const { root, actions } = open('target.size=throw');
    expect(find<HTMLInputElement>(root, '#width').value).toBe('50');
    type(root, '#width', '48');
    expect(actions.type).toHaveBeenCalledWith('target.width', {
      'target.width': '48',
      'target.height': '60',
    });
  });

  test('askView leaves out the mattresses that the region does not have, and keeps the region', () => {
    const { root, actions } = open('target.size=double&target.region=uk');
    const list = find<HTMLSelectElement>(root, 'select');
    const labels = [...list.options].map(({ text }) => text);
    expect(labels).not.toContain('Queen');
    list.selectedIndex = labels.indexOf('Super king');
    list.dispatchEvent(new Event('change'));
    expect(actions.choose).toHaveBeenCalledWith({
      'target.size': 'super-king',
      'target.region': 'uk',
    });
  });

  test('askView asks for blocks without a unit', () => {
    const { root } = open('target.columns=4&target.rows=5');
    expect(find<HTMLInputElement>(root, '#columns').value).toBe('4');
    expect(root.querySelector('.unit')).toBeNull();
  });

  test('askView has no chips for a unit that is set', () => {
    expect(open('target.size=lap').root.querySelectorAll('.chip')).toHaveLength(2);
    const set = open('target.size=lap', (path) => path === 'unit');
    expect(set.root.querySelectorAll('.chip')).toHaveLength(0);
    expect(set.root.querySelector('#width')).not.toBeNull();
  });
});
