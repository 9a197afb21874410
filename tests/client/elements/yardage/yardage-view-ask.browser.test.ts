import { describe, expect, test, vi } from 'vitest';
import { askView } from '../../../../client/elements/yardage/yardage-view-ask.ts';
import { CLOTH, yardageContext } from '../../../support/light-contexts.ts';
import { find, renderFresh, type } from '../../../support/render.ts';

function open(query = CLOTH, isLocked = (_path: string) => false) {
  const actions = { type: vi.fn(), choose: vi.fn(), measureIn: vi.fn(), retry: vi.fn() };
  const { context } = yardageContext(query, { act: actions, isLocked });
  return { root: renderFresh(askView(context)), actions, draft: context.status.draft };
}

describe('askView of the yardage', () => {
  test('askView takes out what may be left empty, and keeps empty what may not', () => {
    const { root, actions, draft } = open(`${CLOTH}&fabrics.0.lengthLeft=90`);
    type(root, '#lengthLeft', '');
    const { 'fabrics.0.lengthLeft': _left, ...rest } = draft;
    expect(actions.type).toHaveBeenCalledWith('fabrics.0.lengthLeft', rest);
    type(root, '#width', '');
    expect(actions.type).toHaveBeenLastCalledWith('fabrics.0.width', {
      ...draft,
      'fabrics.0.width': '',
    });
  });

  test('askView says what stands for a field that is left empty', () => {
    const { root } = open();
    expect(find<HTMLInputElement>(root, '#selvage').placeholder).toBe('½');
    expect(find<HTMLInputElement>(root, '#lengthLeft').placeholder).toBe('not known');
  });

  test('askView offers no other size once there are as many as the service takes', () => {
    const pieces = Array.from({ length: 24 }, (_, at) => {
      const path = `fabrics.0.pieces.${at}`;
      return `${path}.id=p${at}&${path}.width=8&${path}.length=8&${path}.count=1`;
    });
    const { root } = open(`fabrics.0.id=Fog&fabrics.0.width=42&${pieces.join('&')}`);
    const labels = [...root.querySelectorAll('button')].map(({ textContent }) => textContent);
    expect(root.querySelectorAll('.piece')).toHaveLength(24);
    expect(labels).not.toContain('Another size');
  });

  test('askView reads what is set, the unit too', () => {
    const { root } = open(CLOTH, () => true);
    expect(root.querySelector('input, button')).toBeNull();
  });

  test('askView holds one figure of one piece alone, and no piece comes or goes', () => {
    const two = `${CLOTH}&${CLOTH.slice(CLOTH.indexOf('fabrics.0.pieces')).replaceAll('pieces.0', 'pieces.1').replace('id=A', 'id=B')}`;
    const { root } = open(two, (path) => path === 'fabrics.0.pieces.1.width');
    const held = [...root.querySelectorAll('input')].filter(({ readOnly }) => readOnly);
    expect(held.map(({ id }) => id)).toEqual(['width-1']);
    expect(root.querySelector('#width-1-reason')?.textContent).toBe('Set by this page');
    expect(root.querySelector('button[aria-label^="Leave out"]')).toBeNull();
    expect(root.textContent).not.toContain('Another size');
    const free = open(two).root;
    expect(free.querySelectorAll('button[aria-label^="Leave out"]')).toHaveLength(2);
  });
});
