import { expect, test } from 'vitest';
import { courseView } from '../../../../client/elements/wash/wash-view-course.ts';
import { readText, renderFresh } from '../../../support/render.ts';
import { showWash } from '../../../support/wash-example.ts';

const SERIES = [1, 3]
  .map(
    (washes, index) =>
      `swatches.${index}.fabric=flannel&swatches.${index}.direction=length&swatches.${index}.before=10&swatches.${index}.after=${10 - 0.4 * (index + 1)}&swatches.${index}.washes=${washes}`,
  )
  .join('&');

const show = (query: string) => {
  const context = showWash(query);
  if (context.state.answer === undefined) throw new Error('There is no answer.');
  return renderFresh(courseView(context, context.state.answer));
};

test('courseView draws a dot for each count that was measured, and says how well the line fits', () => {
  const root = show(`${SERIES}&grain=aligned`);
  expect(root.querySelectorAll('.dot').length).toBe(2);
  expect(readText(root, '.legend')).toMatch(
    /A Flannel, along the roll: tends to [\d.]+\s%, fitted to/,
  );
});

test('courseView draws the bars of both sides only where they differ', () => {
  expect(show(`${SERIES}&grain=aligned`).querySelectorAll('.doubt').length).toBe(8);
  expect(show(SERIES).querySelectorAll('.doubt').length).toBe(4);
});
