import { expect, test } from 'vitest';
import {
  markingView,
  swatchSheetView,
} from '../../../../client/elements/wash/wash-view-marking.ts';
import { find, readText, renderFresh } from '../../../support/render.ts';
import { showWash } from '../../../support/wash-example.ts';

test('markingView tells the steps in the unit of the page and prints the sheet', () => {
  const context = showWash('unit=cm');
  const root = renderFresh(markingView(context));
  expect(readText(root, '.steps').replaceAll('\u00a0', ' ')).toContain('25 cm apart');
  find(root, 'button').click();
  expect(context.act.printSheet).toHaveBeenCalledOnce();
});

test('markingView says which marks the sheet has and why', () => {
  const said = renderFresh(markingView(showWash())).textContent ?? '';
  expect(said.replaceAll('\u00a0', ' ')).toContain(
    'marks 7 in apart, the most that fits across both Letter and A4',
  );
});

test('swatchSheetView says to print at 100 % and has room to write', () => {
  const root = renderFresh(swatchSheetView(showWash()));
  expect(root.textContent).toContain('Print at 100 %. Measure this line first:');
  expect(root.querySelectorAll('tbody td').length).toBe(12);
});
