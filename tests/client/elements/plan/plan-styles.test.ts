import { expect, test } from 'vitest';
import { planStyles } from '../../../../client/elements/plan/plan-styles.ts';
import { SHARED_STYLES } from '../../../../client/look/shared-styles.ts';

test('planStyles hold the shared styles and what prints', () => {
  expect(planStyles.cssText.startsWith(SHARED_STYLES)).toBe(true);
  expect(planStyles.cssText).toContain('@media print');
});

test('planStyles close every brace that they open', () => {
  expect(planStyles.cssText.split('{').length).toBe(planStyles.cssText.split('}').length);
});
