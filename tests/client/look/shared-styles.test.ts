import { expect, test } from 'vitest';
import { SHARED_STYLES } from '../../../client/look/shared-styles.ts';
import { TOKENS } from '../../../client/look/tokens.ts';

test('SHARED_STYLES carry the tokens on the element itself', () => {
  expect(SHARED_STYLES).toContain(`:host{${TOKENS}`);
});

test('SHARED_STYLES name no colour but the tokens and see-through ink', () => {
  const colors = SHARED_STYLES.replace(TOKENS, '').match(/#[\da-f]{3,8}\b/gi) ?? [];
  for (const color of colors) expect(color).toMatch(/^#(0000|1b2233\w\w)$/);
});

test('SHARED_STYLES close every brace that they open', () => {
  expect(SHARED_STYLES.split('{').length).toBe(SHARED_STYLES.split('}').length);
});
