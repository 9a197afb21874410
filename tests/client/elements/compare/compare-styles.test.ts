import { expect, test } from 'vitest';
import { compareStyles } from '../../../../client/elements/compare/compare-styles.ts';

test('the styles of the comparison know no root of the host', () => {
  expect(compareStyles.cssText).toContain('.pair');
  expect(compareStyles.cssText).not.toMatch(/\drem\b/);
});
