import { expect, test } from 'vitest';
import { wearStyles } from '../../../client/look/wear-styles.ts';

function makeRoot(): ShadowRoot {
  const host = document.createElement('div');
  document.body.replaceChildren(host);
  return host.attachShadow({ mode: 'open' });
}

test('wearStyles adds a sheet once, and keeps what was worn before', () => {
  const root = makeRoot();
  const first = new CSSStyleSheet();
  root.adoptedStyleSheets = [first];
  wearStyles(root, 'p{color:red}');
  wearStyles(root, 'p{color:red}');
  expect(root.adoptedStyleSheets).toHaveLength(2);
  expect(root.adoptedStyleSheets[0]).toBe(first);
});

test('wearStyles shares one sheet among elements', () => {
  const roots = [makeRoot(), makeRoot()];
  for (const root of roots) wearStyles(root, 'b{color:blue}');
  const [one, other] = roots.map(({ adoptedStyleSheets }) => adoptedStyleSheets[0]);
  expect(one).toBe(other);
});
