import { expect, test } from 'vitest';
import { FORM_STYLES, SHEET_STYLES } from '../../../../client/elements/plan/hand-out-styles.ts';

test.each([
  ['the form', FORM_STYLES],
  ['the sheet', SHEET_STYLES],
])('the styles of %s close every brace that they open', (_name, styles) => {
  expect(styles.split('{').length).toBe(styles.split('}').length);
});

test('SHEET_STYLES keep a page within Letter and A4 at margins of 12 mm', () => {
  const [, width, height] = /\.leaf\{width:(\d+)mm;height:(\d+)mm/.exec(SHEET_STYLES) ?? [];
  // A4 is 210 mm wide (ISO 216), Letter 279.4 mm high.
  expect(Number(width)).toBeLessThanOrEqual(210 - 24);
  expect(Number(height)).toBeLessThanOrEqual(279.4 - 24);
});
