import { expect, test } from 'vitest';
import { FABRICS } from '#core/tables/fabrics.ts';
import {
  adviceView,
  defaultsView,
  groundsView,
} from '../../../../client/elements/wash/wash-view-advice.ts';
import { readText, renderFresh } from '../../../support/render.ts';
import { showWash } from '../../../support/wash-example.ts';

const SKEWED =
  'swatches.0.fabric=flannel&swatches.0.direction=length&swatches.0.before=10&swatches.0.after=9.4&swatches.0.diagonals.ac=26&swatches.0.diagonals.bd=25.5';
const show = (query: string, view: typeof adviceView) => {
  const context = showWash(query);
  if (context.state.answer === undefined) throw new Error('There is no answer.');
  return renderFresh(view(context, context.state.answer));
};

test('adviceView says which face puckers, and whether to prewash and why', () => {
  const root = show('', adviceView);
  expect(readText(root, '.puckers')).toMatch(/^The top will pucker: .* −2\.3 along/);
  expect(root.textContent).toMatch(/Prewash\.\s+The layers pull 2\.8 percent points apart/);
});

test('adviceView tells the skew and how far a block leans', () => {
  // AATCC TM179: 100 · 2 · (26 − 25.5) / (26 + 25.5) = 1.94 %.
  const root = show(SKEWED, adviceView);
  expect(readText(root, '.skew').replaceAll('\u00a0', ' ')).toContain(
    'Flannel, along the roll: 1.9 %.',
  );
  expect(show('', adviceView).querySelector('.skew')).toBeNull();
});

test('defaultsView has the range and the source of every cloth of the table', () => {
  const said = renderFresh(defaultsView(showWash())).textContent ?? '';
  for (const { shrinkSource } of FABRICS) expect(said).toContain(shrinkSource);
  expect(said).toContain('3–10');
});

test('groundsView tells cautions and what was taken for granted, each once and with its source', () => {
  const root = show('', groundsView);
  expect(root.querySelectorAll('li').length).toBeGreaterThan(3);
  expect(root.textContent).toContain('US Fire Administration');
  expect(root.textContent?.split('after one wash').length).toBe(2);
});
