import * as v from 'valibot';
import { describe, expect, test } from 'vitest';
import { washAnswerSchema } from '../../../client/data/wash-answer-schema.ts';
import { answerWash } from '../../support/wash-example.ts';

const FULL =
  'swatches.0.fabric=flannel&swatches.0.direction=length&swatches.0.before=10&swatches.0.after=9.4&swatches.0.diagonals.ac=14&swatches.0.diagonals.bd=13.5&wanted.width=40&wanted.height=50';

/** The answer as it comes over the wire, with one place of it changed. */
function spoil(path: readonly (string | number)[], value: unknown): unknown {
  const answer: unknown = JSON.parse(JSON.stringify(answerWash(FULL)));
  const last = path.at(-1) ?? '';
  const holder = path
    .slice(0, -1)
    .reduce<unknown>((at, key) => Reflect.get(Object(at), key), answer);
  if (value === undefined) Reflect.deleteProperty(Object(holder), last);
  else Reflect.set(Object(holder), last, value);
  return answer;
}

describe('washAnswerSchema', () => {
  test.each(['', 'unit=cm', 'sewn.width=42&sewn.height=52', FULL])(
    'washAnswerSchema takes the answer to %j',
    (query) => {
      expect(v.is(washAnswerSchema, JSON.parse(JSON.stringify(answerWash(query))))).toBe(true);
    },
  );

  test('washAnswerSchema lets pass what a later engine adds', () => {
    expect(v.is(washAnswerSchema, spoil(['moon'], 'full'))).toBe(true);
  });

  test.each([
    [['swatches', 0, 'change'], undefined],
    [['swatches', 0, 'direction'], 'bias'],
    [['swatches', 0, 'skew', 'lean'], null],
    [['sandwich', 0, 'low', 'width'], Number.NaN],
    [['sewFor', 'nearest', 'cut'], '8'],
    [['pull', 0, 'says'], 'sings'],
    [['prewash', 'why'], undefined],
    [['links', 'page'], 7],
    [['input', 'block', 'seam'], undefined],
  ] as const)('washAnswerSchema refuses an answer whose %j is %s', (path, value) => {
    expect(v.is(washAnswerSchema, spoil(path, value))).toBe(false);
  });
});
