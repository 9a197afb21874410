import { describe, expect, test } from 'vitest';
import {
  drawOption,
  drawSmall,
  listPrints,
} from '../../../../client/elements/stash/draw-option.ts';
import { answerStash } from '../../../support/stock.ts';

const answer = answerStash();
const [first] = answer.options;
if (first === undefined) throw new Error('There is no quilt.');

describe('drawOption', () => {
  const letters = drawOption(first, answer).shapes.flatMap((shape) =>
    shape.kind === 'text' && shape.part === 'letter' ? [shape.text] : [],
  );

  test('draws a block for each of the quilt', () => {
    expect(letters).toHaveLength(first.blocks);
  });

  test('gives each print the blocks that are cut of it, under the letter of its place in the table', () => {
    const prints = listPrints(answer);
    expect(prints).toEqual(['Heron dot', 'Rust check', 'Oat sprig', 'Moss stripe']);
    for (const { id, role, blocks } of first.uses.filter((use) => use.role === 'top')) {
      const letter = String.fromCharCode(65 + prints.indexOf(id));
      expect(
        letters.filter((one) => one === letter),
        `${role} ${id}`,
      ).toHaveLength(blocks);
    }
  });
});

describe('drawSmall', () => {
  test('has nothing to read in it', () => {
    expect(drawSmall(first, answer).shapes.every(({ kind }) => kind === 'path')).toBe(true);
  });
});
