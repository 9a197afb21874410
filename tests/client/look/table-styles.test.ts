import { expect, test } from 'vitest';
import { TABLE_STYLES } from '../../../client/look/table-styles.ts';

test('TABLE_STYLES name no colour but the tokens and none at all', () => {
  const colors = TABLE_STYLES.match(/#[\da-f]{3,8}\b/gi) ?? [];
  expect(new Set(colors)).toEqual(new Set(['#0000']));
});

test('TABLE_STYLES close every brace that they open', () => {
  expect(TABLE_STYLES.split('{').length).toBe(TABLE_STYLES.split('}').length);
});

test('TABLE_STYLES leave what is typed into and pressed out of print', () => {
  expect(TABLE_STYLES).toMatch(/@media print\{\n\.ask,[^{]*button[^{]*\{display:none!important\}/);
});
