import { describe, expect, test } from 'vitest';
import { resultView } from '../../../../client/elements/yardage/yardage-view-result.ts';
import { CLOTH, yardageContext } from '../../../support/light-contexts.ts';
import { readText, renderFresh } from '../../../support/render.ts';

function open(query?: string) {
  const { context, answer } = yardageContext(query);
  return { context, answer, root: renderFresh(resultView(context, answer)) };
}
const plain = (text: string) => text.replaceAll('\u00a0', ' ');

describe('resultView of the yardage', () => {
  test('resultView says the strips and what is left over of each', () => {
    const { root } = open();
    expect(plain(readText(root, '.strip'))).toBe('10 × 8½ in tall 4 × A, 7 in left over');
  });

  test('resultView says of a bolt that is not enough what it gives, and in words, not in colour alone', () => {
    const { root } = open(`${CLOTH}&fabrics.0.lengthLeft=5`);
    expect(readText(root, '[part=enough]')).toMatch(/not enough\. It gives: 0/);
    expect(readText(open(`${CLOTH}&fabrics.0.lengthLeft=200`).root, '[part=enough]')).toMatch(
      /is enough\.$/,
    );
    expect(open().root.querySelector('[part=enough]')).toBeNull();
  });

  test('resultView answers for every cloth', () => {
    const { root } = open(
      `${CLOTH}&${CLOTH.replaceAll('fabrics.0', 'fabrics.1').replace('Fog', 'Heron')}`,
    );
    expect(root.querySelectorAll('[part=result]')).toHaveLength(2);
  });
});
