import { describe, expect, test } from 'vitest';
import { drawKit, listPrints } from '../../../../client/elements/kits/draw-kit.ts';
import { answerKits } from '../../../support/stock.ts';

const answer = answerKits();
const order = listPrints(answer);

describe('drawKit', () => {
  test('has as many squares of each print as the kit', () => {
    const [group] = answer.kits;
    const letters = drawKit(group?.prints ?? [], order).shapes.flatMap((shape) =>
      shape.kind === 'text' ? [shape.text] : [],
    );
    for (const { id, blocks } of group?.prints ?? []) {
      const letter = String.fromCharCode(65 + order.indexOf(id));
      expect(letters.filter((one) => one === letter)).toHaveLength(blocks);
    }
    expect(letters).toHaveLength(30);
  });

  test('is laid print by print, in about as many rows as columns', () => {
    const { box } = drawKit([{ id: order[0] ?? '', blocks: 50 }], order);
    expect([box.width, box.height]).toEqual([800, 700]);
  });

  test('of very many squares has no letters', () => {
    const { shapes } = drawKit([{ id: order[0] ?? '', blocks: 61 }], order);
    expect(shapes.every(({ kind }) => kind === 'path')).toBe(true);
  });
});
