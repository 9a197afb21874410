import { expect, test } from 'vitest';
import { heedView } from '../../../../client/elements/plan/hand-out-heed.ts';
import { makeHandOut } from '../../../support/hand-out.ts';
import { watchContext } from '../../../support/plan-context.ts';
import { readText, renderFresh } from '../../../support/render.ts';

const show = (handOut = makeHandOut()) => renderFresh(heedView(watchContext(), handOut));

test('heedView has all that is dangerous or wants care, the gravest first', () => {
  const handOut = makeHandOut({ target: { size: 'cot' } });
  const root = show(handOut);
  expect(readText(root, 'p')).toMatch(/^Danger\. Not for a sleeping baby/);
  for (const caution of handOut.plan.cautions.filter(({ severity }) => severity !== 'note')) {
    expect(root.textContent).toContain(caution.text.slice(0, 40));
  }
});

test('heedView says of every quilt that a baby does not sleep under it', () => {
  expect(show().textContent).toContain('sleeping space of a baby under twelve months');
});

test('heedView leaves out what counts only where quilts are sold', () => {
  expect(show().textContent).not.toContain('before you sell');
});
