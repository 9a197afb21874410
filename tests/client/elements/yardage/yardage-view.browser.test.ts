import { expect, test } from 'vitest';
import { yardageView } from '../../../../client/elements/yardage/yardage-view.ts';
import { yardageContext } from '../../../support/light-contexts.ts';
import { readText, renderFresh } from '../../../support/render.ts';

test('yardageView says once to those who hear it what to buy', () => {
  const { context } = yardageContext();
  const root = renderFresh(yardageView(context));
  expect(readText(root, '[role=status]').replace('\u00a0', ' ')).toBe('Buy 2⅝ yd.');
  const busy = { ...context, status: { ...context.status, isBusy: true } };
  expect(readText(renderFresh(yardageView(busy)), '[role=status]')).toBe('');
});

test('yardageView says that the figures are of before while something is wrong', () => {
  const { context } = yardageContext();
  const faults = [{ code: 'empty', path: ['fabrics', '0', 'width'] } as const];
  const root = renderFresh(yardageView({ ...context, status: { ...context.status, faults } }));
  expect(readText(root, '[role=alert]')).toBe(context.words.light.stale);
});
