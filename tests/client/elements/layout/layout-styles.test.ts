import { expect, test } from 'vitest';
import { layoutStyles } from '../../../../client/elements/layout/layout-styles.ts';

test('the styles of the layout know no root of the host, and show the floor sheet on paper alone', () => {
  expect(layoutStyles.cssText).not.toMatch(/\drem\b/);
  const [screen, paper] = layoutStyles.cssText.split('.floor{display:none}');
  expect([screen?.includes('.floor{'), paper?.includes('.floor{display:block}')]).toEqual([
    false,
    true,
  ]);
});
