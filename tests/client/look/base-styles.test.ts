import { expect, test } from 'vitest';
import { BASE_STYLES } from '../../../client/look/base-styles.ts';
import { LIGHT_STYLES } from '../../../client/look/light-styles.ts';
import { TOKENS } from '../../../client/look/tokens.ts';

test('BASE_STYLES carry the tokens on the element itself, and hide what its host hides', () => {
  expect(BASE_STYLES).toContain(`:host{${TOKENS}`);
  expect(BASE_STYLES).toContain(':host([hidden]){display:none}');
});

test('BASE_STYLES give what is pressed or typed into 44 px', () => {
  expect(BASE_STYLES).toMatch(/input,select,button,\.chip\{[^}]*min-height:44px/);
});

test.each([
  ['BASE_STYLES', BASE_STYLES],
  ['LIGHT_STYLES', LIGHT_STYLES],
])('%s name no colour but the tokens, and close every brace', (_name, styles) => {
  expect(styles.replace(TOKENS, '').match(/#[\da-f]{3,8}\b/gi) ?? []).toEqual([]);
  expect(styles.split('{').length).toBe(styles.split('}').length);
});
