import { expect, test } from 'vitest';
import { sizeStyles } from '../../../../client/elements/size/size-styles.ts';
import { LIGHT_STYLES } from '../../../../client/look/light-styles.ts';

test('sizeStyles wear what all small elements do, and add no colour of their own', () => {
  const own = `${sizeStyles}`.replace(LIGHT_STYLES, '');
  expect(own.length).toBeLessThan(`${sizeStyles}`.length);
  expect(own).not.toMatch(/#[\da-f]{3,8}\b/i);
  expect(own.split('{').length).toBe(own.split('}').length);
});
