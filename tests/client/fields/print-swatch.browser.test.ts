import { expect, test } from 'vitest';
import { findPrintLook } from '#core/drawing/find-print-look.ts';
import { printSwatch } from '../../../client/fields/print-swatch.ts';
import { find, readText, renderFresh } from '../../support/render.ts';

test('printSwatch(print) shows the cloth and the letter of that print', () => {
  const root = renderFresh(printSwatch(2));
  expect(find(root, '.face').getAttribute('fill')).toBe(findPrintLook(2).ground);
  expect(readText(root, 'text')).toBe('C');
});

test('printSwatch(print, color) shows that color', () => {
  const root = renderFresh(printSwatch(0, '#123456'));
  expect(find(root, '.face').getAttribute('fill')).toBe('#123456');
});

test('printSwatch is decoration: the name of the cloth stands beside it', () => {
  expect(find(renderFresh(printSwatch(0)), 'svg').getAttribute('aria-hidden')).toBe('true');
});
