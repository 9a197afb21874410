import { describe, expect, test } from 'vitest';
import {
  answerSide,
  BLANK,
  chooseUnit,
  isSettled,
  otherThan,
  typeSide,
} from '../../../../client/elements/compare/compare-state.ts';
import { planThrow } from '../../../support/plan-throw.ts';

const answer = planThrow();

describe('typeSide', () => {
  test('waits for the plan in what was typed, and keeps the one before in sight', () => {
    const side = typeSide({ ...BLANK, answer }, 'https://quilts.example/?target.size=lap');
    expect(side).toMatchObject({ query: 'target.size=lap', isBusy: true, faults: [], answer });
  });

  test('says that there is no plan in what was typed, and takes the old one away', () => {
    const side = typeSide({ ...BLANK, answer, query: 'target.size=lap' }, 'my quilt');
    expect(side).toMatchObject({ typed: 'my quilt', query: '', isBusy: false });
    expect(side.faults).toEqual([{ code: 'target-unclear', path: [] }]);
    expect(side.answer).toBeUndefined();
  });

  test('of an empty field says nothing', () => {
    expect(typeSide(BLANK, ' ').faults).toEqual([]);
  });

  test('asks nothing anew where the plan is the same', () => {
    const side = { ...BLANK, query: 'target.size=lap', answer };
    expect(typeSide(side, ' ?target.size=lap ').isBusy).toBe(false);
  });
});

describe('answerSide', () => {
  const waiting = typeSide({ ...BLANK, answer }, 'target.size=lap');

  test('takes an answer and who gave it', () => {
    const side = answerSide(waiting, { kind: 'answer', answer, from: 'device' });
    expect(side).toMatchObject({ answer, from: 'device', isBusy: false, faults: [] });
  });

  test('keeps the plan before beside faults and beside trouble, one of them at a time', () => {
    const troubled = answerSide(waiting, { kind: 'unreachable', trouble: 'busy' });
    expect(troubled).toMatchObject({ trouble: 'busy', answer, isBusy: false });
    const faults = [{ code: 'quilt-too-large', path: [] }] as const;
    const wrong = answerSide(troubled, { kind: 'faults', faults });
    expect(wrong).toMatchObject({ faults, answer });
    expect(wrong.trouble).toBeUndefined();
  });
});

describe('otherThan, isSettled and chooseUnit', () => {
  const side = { ...BLANK, answer };

  test('know the two places', () => {
    expect([otherThan('a'), otherThan('b')]).toEqual(['b', 'a']);
  });

  test('tell a plan that was asked for from one that is not it', () => {
    expect(isSettled(side)).toBe(true);
    for (const change of [
      { answer: undefined },
      { isBusy: true },
      { trouble: 'silent' as const },
      { faults: [{ code: 'empty', path: [] } as const] },
    ]) {
      expect(isSettled({ ...side, ...change })).toBe(false);
    }
  });

  test('tell figures in what is wanted, else as the first plan that is there', () => {
    const metric = { ...BLANK, answer: planThrow({ unit: 'cm' }) };
    expect(chooseUnit({ a: side, b: metric }, 'cm')).toBe('cm');
    expect(chooseUnit({ a: side, b: metric }, undefined)).toBe('in');
    expect(chooseUnit({ a: BLANK, b: metric }, 'ell')).toBe('cm');
  });
});
