import { expect, test } from 'vitest';
import { kitsStyles } from '../../../../client/elements/kits/kits-styles.ts';
import { SHARED_STYLES } from '../../../../client/look/shared-styles.ts';
import { TABLE_STYLES } from '../../../../client/look/table-styles.ts';

test('kitsStyles hold what all elements and all tables of cloth wear', () => {
  expect(kitsStyles.cssText.startsWith(SHARED_STYLES)).toBe(true);
  expect(kitsStyles.cssText).toContain(TABLE_STYLES);
});

test('kitsStyles close every brace that they open', () => {
  expect(kitsStyles.cssText.split('{').length).toBe(kitsStyles.cssText.split('}').length);
});
