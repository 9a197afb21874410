import { expect, test } from 'vitest';
import { FOCUS_STYLES } from '../../../../client/elements/plan/focus-styles.ts';

test('FOCUS_STYLES close every brace that they open, and do not print', () => {
  expect(FOCUS_STYLES.split('{').length).toBe(FOCUS_STYLES.split('}').length);
  expect(FOCUS_STYLES).toContain('@media print{.focus{display:none');
});
