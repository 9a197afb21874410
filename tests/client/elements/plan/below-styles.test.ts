import { expect, test } from 'vitest';
import { BELOW_STYLES } from '../../../../client/elements/plan/below-styles.ts';

test('BELOW_STYLES close every brace that they open, and print', () => {
  expect(BELOW_STYLES.split('{').length).toBe(BELOW_STYLES.split('}').length);
  expect(BELOW_STYLES).toContain('@media print');
});
