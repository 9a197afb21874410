import { describe, expect, test } from 'vitest';
import { layoutView } from '../../../../client/elements/layout/layout-view.ts';
import { layoutContext, SMALL } from '../../../support/layout-context.ts';
import { find, readText, renderFresh } from '../../../support/render.ts';

describe('layoutView', () => {
  test('layoutView shows the grid before what is asked, and no floor sheet until it is printed', () => {
    const root = renderFresh(layoutView(layoutContext()));
    const sections = [...root.querySelectorAll('.table > section')];
    expect(sections.map((section) => section.querySelector('[role=grid]') !== null)).toEqual([
      true,
      false,
    ]);
    expect(root.querySelector('.floor')).toBeNull();
    expect(
      renderFresh(layoutView(layoutContext(SMALL, { isPrinting: true }))).querySelector('.floor'),
    ).not.toBeNull();
  });

  test('layoutView says the same mistake of a grid once', () => {
    const context = layoutContext();
    const hostFaults = [
      { code: 'not-one-of', path: ['fixed', 1], received: 'Q' },
      { code: 'too-short', path: ['fixed'], expected: 2, received: 1 },
    ] as const;
    const root = renderFresh(layoutView({ ...context, status: { ...context.status, hostFaults } }));
    expect(readText(root, '.notice ul')).toBe(
      'Row B of the grid says “Q”, and there is no such print. fixed.1',
    );
  });

  test('layoutView keeps the room of the grid until there is one', () => {
    const { grid: _grid, status, ...context } = layoutContext();
    const blank = { ...context, grid: undefined, status: { ...status, answer: undefined } };
    expect(find(renderFresh(layoutView(blank)), '.waiting').childElementCount).toBe(0);
  });

  test('layoutView undoes from anywhere beside the grid, and leaves typing its own undo', () => {
    const context = layoutContext();
    const root = renderFresh(layoutView(context));
    const undo = () => new KeyboardEvent('keydown', { key: 'z', ctrlKey: true, bubbles: true });
    find(root, '.go').dispatchEvent(undo());
    expect(context.act.undo).toHaveBeenCalledOnce();
    find(root, '#name-A').dispatchEvent(undo());
    expect(context.act.undo).toHaveBeenCalledOnce();
  });
});
