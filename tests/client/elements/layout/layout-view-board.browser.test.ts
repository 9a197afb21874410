import { render } from 'lit';
import { describe, expect, test } from 'vitest';
import {
  boardView,
  findScale,
  namePrint,
} from '../../../../client/elements/layout/layout-view-board.ts';
import { layoutContext, SMALL } from '../../../support/layout-context.ts';
import { find, renderFresh } from '../../../support/render.ts';

const HAND = ['AAB', 'CBC'];
const show = (context: ReturnType<typeof layoutContext>) =>
  renderFresh(boardView(context, context.grid));

describe('boardView', () => {
  test('boardView is a grid with one tab stop, its blocks named by place, print and state', () => {
    const root = show(
      layoutContext({ ...SMALL, 'fixed.0': '..B', 'fixed.1': '...' }, { hand: HAND }),
    );
    expect(find(root, 'table').getAttribute('role')).toBe('grid');
    expect(root.querySelectorAll('td[tabindex="0"]')).toHaveLength(1);
    const names = [...root.querySelectorAll('td')].map(({ ariaLabel }) => ariaLabel);
    expect(names).toEqual([
      'A1, A Moss, touches its own print',
      'A2, A Moss, touches its own print',
      'A3, B Rust, pinned, touches its own print',
      'B1, C',
      'B2, B Rust, touches its own print',
      'B3, C',
    ]);
  });

  test('boardView tells which block a finger or a key takes', () => {
    const context = layoutContext(SMALL, { hand: HAND });
    const root = show(context);
    find(root, '[data-place="4"] b').click();
    expect(context.act.tap).toHaveBeenCalledWith(4);
    const key = new KeyboardEvent('keydown', { key: 'ArrowRight', bubbles: true });
    find(root, '[data-place="0"]').dispatchEvent(key);
    expect(context.act.go).toHaveBeenCalledWith(1);
  });

  test('boardView touches no row that is as it was, and makes anew what a fewer and a more rows need', () => {
    const context = layoutContext(SMALL, { hand: HAND });
    const root = show(context);
    const foot = find(root, 'tbody tr:last-child');
    const other = { ...context.grid, cells: ['BAA', 'CBC'], meetings: [] };
    render(boardView(context, other), root);
    expect(find(root, '[data-place="0"]').textContent).toContain('B');
    expect(root.querySelector('tbody tr:last-child')).toBe(foot);
    render(boardView(context, { ...other, cells: ['BAA'] }), root);
    render(boardView(context, other), root);
    expect(root.querySelectorAll('td')).toHaveLength(6);
    expect(root.querySelectorAll('.cloth')).toHaveLength(2);
  });
});

describe('findScale and namePrint', () => {
  test.each([
    [320, 5, { isLarge: false, isWide: false, isLegible: true }],
    [320, 12, { isLarge: true, isWide: true, isLegible: true }],
    [700, 20, { isLarge: false, isWide: false, isLegible: true }],
    [700, 40, { isLarge: true, isWide: true, isLegible: true }],
  ])('findScale in %d pixels of %d columns is %j', (room, columns, scale) => {
    expect(findScale({ ...layoutContext(), room }, columns)).toEqual(scale);
  });

  test('findScale shows the whole where somebody chose so, letters or no', () => {
    const { board, ...context } = layoutContext();
    const chosen = { ...context, board: { ...board, isLarge: false }, room: 320 };
    expect(findScale(chosen, 20)).toEqual({ isLarge: false, isWide: false, isLegible: false });
  });

  test('namePrint says a letter once where the print has no other name', () => {
    const { grid } = layoutContext();
    expect([namePrint(grid, 'A'), namePrint(grid, 'C')]).toEqual(['A Moss', 'C']);
  });
});
