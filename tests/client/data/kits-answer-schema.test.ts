import * as v from 'valibot';
import { describe, expect, test } from 'vitest';
import { kitsAnswerSchema } from '../../../client/data/kits-answer-schema.ts';
import { answerKits } from '../../support/stock.ts';

const answer = JSON.parse(JSON.stringify(answerKits()));

describe('kitsAnswerSchema', () => {
  test('takes the answer of the core, and what a later engine adds', () => {
    expect(v.is(kitsAnswerSchema, answer)).toBe(true);
    expect(v.is(kitsAnswerSchema, { ...answer, moon: 'full' })).toBe(true);
  });

  test.each(Object.keys(kitsAnswerSchema.entries).filter((key) => !/buyMore|money/.test(key)))(
    'refuses an answer without %s',
    (key) => {
      const { [key]: _gone, ...rest } = answer;
      expect(v.is(kitsAnswerSchema, rest)).toBe(false);
      expect(v.is(kitsAnswerSchema, { ...rest, [key]: null })).toBe(false);
    },
  );

  test('refuses what is no answer at all', () => {
    for (const value of [null, 1, 'plan', [], {}]) {
      expect(v.is(kitsAnswerSchema, value)).toBe(false);
    }
  });
});
