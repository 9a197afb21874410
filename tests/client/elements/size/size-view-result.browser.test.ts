import { describe, expect, test } from 'vitest';
import { resultView } from '../../../../client/elements/size/size-view-result.ts';
import { sizeContext } from '../../../support/light-contexts.ts';
import { find, readText, renderFresh } from '../../../support/render.ts';

function open(query?: string) {
  const { context, answer } = sizeContext(query);
  return { root: renderFresh(resultView(context, answer)), answer };
}
const plain = (text: string) => text.replaceAll('\u00a0', ' ');

describe('resultView of the size', () => {
  test('resultView says by how much the quilt differs from the wish, and that it does not', () => {
    const { root } = open('target.width=40&target.height=50&block.cut=8');
    expect(plain(readText(root, '.figures + p'))).toMatch(
      /^Beside your wish: \S+ in (wider|narrower), \S+ in (longer|shorter)\.$/,
    );
    expect(open('target.columns=4&target.rows=5').root.querySelector('.figures + p')).toBeNull();
  });

  test('resultView leaves out cloth that no block is left for', () => {
    const { root, answer } = open(
      'target.columns=1&target.rows=2&layers.0.role=top&layers.0.prints=4&layers.1.role=backing',
    );
    const needed = answer.fabrics.filter(({ pieces }) => pieces > 0);
    expect(needed.length).toBeLessThan(answer.fabrics.length);
    expect(root.querySelectorAll('li.line')).toHaveLength(needed.length);
  });

  test('resultView tells prints without a name by their letter', () => {
    const { root } = open();
    expect(readText(root, 'li.line')).toMatch(/^Quilting cotton Top A /);
  });

  test('resultView leads to the whole plan at the service', () => {
    const { root, answer } = open();
    expect(find(root, 'a').getAttribute('href')).toBe(
      `https://planner.example${answer.links.page}`,
    );
  });

  test('resultView takes for slight what is so in the unit of the answer', () => {
    const said = (unit: 'in' | 'cm', width: number) => {
      const { context, answer } = sizeContext(`target.size=lap&unit=${unit}`, {
        unit: unit === 'in' ? 'cm' : 'in',
      });
      const fit = { ...answer.fit, width, height: 0 };
      return readText(renderFresh(resultView(context, { ...answer, fit })), '.figures + p');
    };
    expect(said('in', 0.06)).not.toContain('wider');
    expect(said('cm', 0.06)).toContain('wider');
  });
});
