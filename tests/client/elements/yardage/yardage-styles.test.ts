import { expect, test } from 'vitest';
import { yardageStyles } from '../../../../client/elements/yardage/yardage-styles.ts';
import { LIGHT_STYLES } from '../../../../client/look/light-styles.ts';

test('yardageStyles wear what all small elements do, and add no colour of their own', () => {
  const own = `${yardageStyles}`.replace(LIGHT_STYLES, '');
  expect(own.length).toBeLessThan(`${yardageStyles}`.length);
  expect(own).not.toMatch(/#[\da-f]{3,8}\b/i);
  expect(own.split('{').length).toBe(own.split('}').length);
});
