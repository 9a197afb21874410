import * as v from 'valibot';
import { describe, expect, test } from 'vitest';
import { stashAnswerSchema } from '../../../client/data/stash-answer-schema.ts';
import { answerStash } from '../../support/stock.ts';

const answer = JSON.parse(JSON.stringify(answerStash()));

describe('stashAnswerSchema', () => {
  test('takes the answer of the core, and what a later engine adds', () => {
    expect(v.is(stashAnswerSchema, answer)).toBe(true);
    expect(v.is(stashAnswerSchema, { ...answer, moon: 'full' })).toBe(true);
  });

  test.each(Object.keys(stashAnswerSchema.entries).filter((key) => !/buyMore|money/.test(key)))(
    'refuses an answer without %s',
    (key) => {
      const { [key]: _gone, ...rest } = answer;
      expect(v.is(stashAnswerSchema, rest)).toBe(false);
      expect(v.is(stashAnswerSchema, { ...rest, [key]: null })).toBe(false);
    },
  );

  test('refuses what is no answer at all', () => {
    for (const value of [null, 1, 'plan', [], {}]) {
      expect(v.is(stashAnswerSchema, value)).toBe(false);
    }
  });
});
