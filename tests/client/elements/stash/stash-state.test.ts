import { describe, expect, test } from 'vitest';
import {
  FIRST_DRAFT,
  FIRST_STATE,
  findOption,
  listNames,
  listOtherFaults,
  nameOption,
  namesPrints,
  unitOf,
  writeAsked,
} from '../../../../client/elements/stash/stash-state.ts';
import { answerStash } from '../../../support/stock.ts';

describe('writeAsked', () => {
  test('leaves empty rows and fields out, and knows where the others stand', () => {
    const draft = { 'pieces.1.id': 'Moss', 'pieces.0.role': 'top', 'block.cut': '', unit: 'cm' };
    expect(writeAsked(draft)).toEqual({
      query: 'unit=cm&pieces.0.id=Moss',
      places: [1],
      isEmpty: false,
    });
  });

  test('knows an empty table', () => {
    expect(writeAsked({ 'pieces.0.role': 'top', 'pieces.0.id': ' ' }).isEmpty).toBe(true);
    expect(writeAsked(FIRST_DRAFT).isEmpty).toBe(false);
  });
});

describe('findOption', () => {
  const answer = answerStash();
  const [first, second] = answer.options;

  test('is the one chosen, else the largest', () => {
    const chosen = second === undefined ? '' : nameOption(second);
    expect(findOption({ ...FIRST_STATE, answer, chosen })).toBe(second);
    expect(findOption({ ...FIRST_STATE, answer, chosen: 'gone' })).toBe(first);
    expect(findOption(FIRST_STATE)).toBeUndefined();
  });
});

test('listOtherFaults are those that no cell and no field shows', () => {
  const at = (...path: (string | number)[]) => ({ code: 'empty', path }) as const;
  const faults = [at('pieces', 0, 'width'), at('block', 'cut'), at('pieces'), at('layers')];
  expect(listOtherFaults(faults)).toEqual([at('pieces'), at('layers')]);
});

test('listNames, namesPrints and unitOf read a draft', () => {
  expect(listNames(true)).toEqual(['id', 'role', 'print', 'width', 'length', 'count']);
  expect(listNames(false)).not.toContain('print');
  expect([namesPrints(FIRST_DRAFT), namesPrints({ 'pieces.0.print': 'a' })]).toEqual([false, true]);
  expect([unitOf({}), unitOf({ unit: 'cm' })]).toEqual(['in', 'cm']);
});
