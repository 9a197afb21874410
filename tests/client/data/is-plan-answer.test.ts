import { describe, expect, test } from 'vitest';
import { isPlanAnswer } from '../../../client/data/is-plan-answer.ts';
import { planThrow } from '../../support/plan-throw.ts';

/** The answer as it comes over the wire, with one place of it changed. */
function spoil(path: readonly (string | number)[], value: unknown): unknown {
  const answer: unknown = JSON.parse(JSON.stringify(planThrow({ explain: true })));
  const last = path.at(-1) ?? '';
  const holder = path
    .slice(0, -1)
    .reduce<unknown>((at, key) => Reflect.get(Object(at), key), answer);
  if (value === undefined) Reflect.deleteProperty(Object(holder), last);
  else Reflect.set(Object(holder), last, value);
  return answer;
}

describe('isPlanAnswer', () => {
  test.each([
    {},
    { explain: true },
    { unit: 'cm' },
    { target: { bed: { width: 60, length: 80 } } },
    { target: { columns: 3, rows: 4 } },
    { target: { width: 36, height: 36 } },
    { target: { size: 'queen' } },
  ] as const)('isPlanAnswer takes the answer to %j', (request) => {
    expect(isPlanAnswer(JSON.parse(JSON.stringify(planThrow(request))))).toBe(true);
  });

  test('isPlanAnswer lets pass what a later engine adds', () => {
    expect(isPlanAnswer(spoil(['moon'], 'full'))).toBe(true);
  });

  test.each([
    [['grid', 'columns'], undefined],
    [['grid', 'columns'], '5'],
    [['size', 'washed', 'low', 'width'], null],
    [['size', 'sewn', 'width'], Number.POSITIVE_INFINITY],
    [['options', 0, 'chosen'], 'yes'],
    [['fabrics', 0, 'fabric'], 'cardboard'],
    [['layout', 'cells', 0], 7],
    [['steps', 0, 'do'], undefined],
    [['links', 'page'], undefined],
    [['cautions', 0, 'severity'], 'panic'],
    [['why', 0, 'numbers'], 'none'],
    [['input', 'unit'], 'ell'],
  ] as const)('isPlanAnswer refuses an answer whose %j is %s', (path, value) => {
    expect(isPlanAnswer(spoil(path, value))).toBe(false);
  });

  test('isPlanAnswer refuses what is no answer at all', () => {
    for (const value of [null, 1, 'plan', [], {}]) expect(isPlanAnswer(value)).toBe(false);
  });
});
