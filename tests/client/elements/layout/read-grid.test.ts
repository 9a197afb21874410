import { describe, expect, test } from 'vitest';
import { fitHand, readGrid } from '../../../../client/elements/layout/read-grid.ts';
import { answerLayout, SMALL } from '../../../support/layout-context.ts';

const answer = answerLayout(SMALL);
const [top = '', foot = ''] = answer.cells;

describe('readGrid', () => {
  test('readGrid takes the grid that a hand laid, and the answer’s where that is none of its blocks', () => {
    const hand = [foot, top];
    expect(readGrid({ answer, draft: SMALL, hand }, undefined).cells).toBe(hand);
    for (const other of [undefined, ['AAA', 'AAA'], ['AB', 'CA', 'BC']]) {
      expect(readGrid({ answer, draft: SMALL, hand: other }, undefined).cells).toBe(answer.cells);
    }
  });

  test('readGrid is the very same object while nothing changed, so that nothing is drawn in vain', () => {
    const before = readGrid({ answer, draft: SMALL, hand: undefined }, undefined);
    expect(readGrid({ answer, draft: { ...SMALL }, hand: undefined }, before)).toBe(before);
  });

  test('readGrid takes names and pins from what was typed last, without looking for meetings anew', () => {
    const before = readGrid({ answer, draft: SMALL, hand: undefined }, undefined);
    const draft = { ...SMALL, 'prints.0.id': 'Fern', 'fixed.0': '...', 'fixed.1': `${foot[0]}..` };
    const after = readGrid({ answer, draft, hand: undefined }, before);
    expect(after.names).toEqual(['Fern', 'Rust', 'C']);
    expect(after.pins).toEqual(['...', `${foot[0]}..`]);
    expect(after.meetings).toBe(before.meetings);
    expect(after.key).not.toBe(before.key);
  });
});

test('fitHand gives the grid that a hand laid, and nothing where there is none of these blocks', () => {
  expect(fitHand([foot, top], answer)).toEqual([foot, top]);
  expect(fitHand(['AAA', 'AAA'], answer)).toBeUndefined();
  expect(fitHand([foot, top], undefined)).toBeUndefined();
});
