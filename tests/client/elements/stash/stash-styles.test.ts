import { expect, test } from 'vitest';
import { stashStyles } from '../../../../client/elements/stash/stash-styles.ts';
import { SHARED_STYLES } from '../../../../client/look/shared-styles.ts';
import { TABLE_STYLES } from '../../../../client/look/table-styles.ts';

test('stashStyles hold what all elements and all tables of cloth wear', () => {
  expect(stashStyles.cssText.startsWith(SHARED_STYLES)).toBe(true);
  expect(stashStyles.cssText).toContain(TABLE_STYLES);
});

test('stashStyles close every brace that they open', () => {
  expect(stashStyles.cssText.split('{').length).toBe(stashStyles.cssText.split('}').length);
});
