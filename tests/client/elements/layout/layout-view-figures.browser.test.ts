import { expect, test } from 'vitest';
import {
  countMeetings,
  figuresView,
} from '../../../../client/elements/layout/layout-view-figures.ts';
import { answerLayout, layoutContext, SMALL } from '../../../support/layout-context.ts';
import { readText, renderFresh } from '../../../support/render.ts';

test('figuresView counts in the grid as it lies now, and says when nothing touches less', () => {
  const answer = answerLayout(SMALL);
  const show = (hand?: readonly string[]) => {
    const context = layoutContext(SMALL, hand && { hand });
    return readText(renderFresh(figuresView(context, context.grid, answer)), '[part=figures]');
  };
  expect(show()).toMatch(/sides0.*Fewest there can be0.*No layout of these prints touches less/);
  const moved = show(['AAB', 'CCB']);
  expect(moved).toMatch(/sides3/);
  expect(moved).not.toContain('touches less');
  expect(moved).toMatch(/A Moss 210\.7/);
});

test('countMeetings tells sides from corners', () => {
  const { grid } = layoutContext(SMALL, { hand: ['AAB', 'CBC'] });
  expect(countMeetings(grid)).toEqual({ sides: 1, corners: 1 });
});
