import { expect, test } from 'vitest';
import { fitLeaves } from '../../../../client/elements/plan/fit-leaves.ts';
import { SHEET_STYLES } from '../../../../client/elements/plan/hand-out-styles.ts';
import { wearStyles } from '../../../../client/look/wear-styles.ts';

function makeLeaf(words: number): HTMLElement {
  const host = document.createElement('div');
  document.body.replaceChildren(host);
  const root = host.attachShadow({ mode: 'open' });
  wearStyles(root, SHEET_STYLES);
  const handOut = root.appendChild(document.createElement('section'));
  handOut.className = 'hand-out';
  const leaf = handOut.appendChild(document.createElement('div'));
  leaf.className = 'leaf';
  leaf.append(Object.assign(document.createElement('p'), { textContent: 'cloth '.repeat(words) }));
  fitLeaves(handOut);
  return leaf;
}

test('fitLeaves leaves a page alone that fits', () => {
  expect(makeLeaf(100).className).toBe('leaf');
});

test('fitLeaves sets a fuller page smaller, and no smaller than it must be', () => {
  const leaf = makeLeaf(1600);
  const [, step] = /^leaf tight-(\d)$/.exec(leaf.className) ?? [];
  expect(Number(step)).toBeGreaterThan(0);
  expect(leaf.scrollHeight).toBeLessThanOrEqual(leaf.clientHeight);
  leaf.className = Number(step) === 1 ? 'leaf' : `leaf tight-${Number(step) - 1}`;
  expect(leaf.scrollHeight).toBeGreaterThan(leaf.clientHeight);
});
