import { describe, expect, test } from 'vitest';
import type { WashContext } from '../../../../client/elements/wash/wash-context.ts';
import { resultView } from '../../../../client/elements/wash/wash-view-result.ts';
import { find, readText, renderFresh } from '../../../support/render.ts';
import { showWash } from '../../../support/wash-example.ts';

function show(context: WashContext): HTMLElement {
  if (context.state.answer === undefined) throw new Error('There is no answer.');
  return renderFresh(resultView(context, context.state.answer));
}

describe('resultView', () => {
  test('resultView says what to sew, what comes of it and how far it may be off', () => {
    const root = show(showWash());
    expect(readText(root, '.figures').replaceAll('\u00a0', ' ')).toMatch(
      /^Sew ?42 × 52 in ?After one wash ?40 × 49½ in ?Give or take/,
    );
    expect(readText(root, '.nearest')).toContain('4 across, 5 down');
    expect(find<HTMLAnchorElement>(root, 'a').getAttribute('href')).toMatch(/^\/\?/);
  });

  test('resultView has a row for each count of washes and draws another when it is chosen', () => {
    const context = showWash('sewn.width=42&sewn.height=52&washes.0=2&washes.1=8', { shown: 1 });
    const root = show(context);
    const heads = [...root.querySelectorAll('tbody th')].map((head) => head.textContent);
    expect(heads).toEqual(['2', '8']);
    expect(readText(root, '.figures')).toContain('After 8 washes');
    find(root, '[name=shown]').click();
    expect(context.act.show).toHaveBeenCalledExactlyOnceWith(0);
    expect(root.querySelector('a')).toBeNull();
  });

  test('resultView tells percentages where no size was given', () => {
    const root = show(showWash('washes.0=2&confidence=95'));
    expect(root.querySelector('.picture')).toBeNull();
    expect(readText(root, 'tbody')).toMatch(/^2 [\d.]+\s%/);
  });
});
