import { expect, test } from 'vitest';
import { BASE_STYLES } from '../../../client/look/base-styles.ts';
import { LIGHT_STYLES } from '../../../client/look/light-styles.ts';

test('LIGHT_STYLES wear what all elements do, and leave what is asked out of print', () => {
  expect(LIGHT_STYLES.startsWith(BASE_STYLES)).toBe(true);
  expect(LIGHT_STYLES).toMatch(/@media print\{[^}]*:first-child,button,a\{display:none\}/);
});

test('LIGHT_STYLES leave the box to the host where it says so', () => {
  for (const token of ['gap', 'border', 'radius', 'figure']) {
    expect(LIGHT_STYLES).toContain(`var(--ragbloom-${token},`);
  }
});
