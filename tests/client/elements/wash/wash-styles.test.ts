import { expect, test } from 'vitest';
import { washStyles } from '../../../../client/elements/wash/wash-styles.ts';
import { SHARED_STYLES } from '../../../../client/look/shared-styles.ts';

test('washStyles hold the shared styles and what prints', () => {
  expect(washStyles.cssText.startsWith(SHARED_STYLES)).toBe(true);
  expect(washStyles.cssText).toContain('@media print');
});

test('washStyles close every brace that they open', () => {
  expect(washStyles.cssText.split('{').length).toBe(washStyles.cssText.split('}').length);
});
