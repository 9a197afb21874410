import { beforeAll, describe, expect, test, vi } from 'vitest';
import { FAULT_CODES, type FaultCode } from '#core/faults.ts';
import { PROBLEM_KINDS } from '../../api/http/problem-kinds.ts';
import { PROBLEM_MEANINGS } from '../../api/pages/problem-meanings.ts';
import { readProblem } from '../../client/data/read-problem.ts';
import { en } from '../../client/text/shared/en.ts';
import { FAULT_CASES } from '../contract/fault-cases.ts';

/** Kinds of problem that are no fault of one part of the input. */
const NO_FAULTS = ['several-faults', 'too-many-requests', 'unknown-format'];

/** What one list has that the list of codes lacks, and the other way round. */
function compareCodes(codes: readonly string[], list: object): readonly string[] {
  const keys = Object.keys(list).filter((key) => !NO_FAULTS.includes(key));
  return [
    ...codes.filter((code) => !keys.includes(code)).map((code) => `${code} is missing.`),
    ...keys.filter((key) => !codes.includes(key)).map((key) => `${key} is no fault code.`),
  ];
}

describe('every list of fault codes is closed', () => {
  test.each([
    ['statuses', PROBLEM_KINDS],
    ['pages', PROBLEM_MEANINGS],
    ['English sentences of the client', en.faults],
    ['cases', FAULT_CASES],
  ])('the list of %s has each fault code and nothing else', (_name, list) => {
    expect(compareCodes(FAULT_CODES, list)).toEqual([]);
  });

  test('compareCodes refuses a code too few and a code too many', () => {
    expect(compareCodes(['a', 'b'], { a: 1, c: 1 })).toEqual([
      'b is missing.',
      'c is no fault code.',
    ]);
  });

  test('no code stands in the list twice', () => {
    expect(new Set(FAULT_CODES).size).toBe(FAULT_CODES.length);
  });
});

/** A sentence with a figure left out shows as one of these. */
const HOLE = /undefined|null|NaN|\[object|“”| {2}|\bof \.|\bis \./;

describe('every fault code is said from core to page', () => {
  const bodies = new Map<FaultCode, { readonly status: number; readonly text: string }>();
  beforeAll(async () => {
    const log = vi.spyOn(console, 'error').mockImplementation(() => undefined);
    for (const code of FAULT_CODES) {
      const answer = await FAULT_CASES[code]();
      bodies.set(code, { status: answer.status, text: await answer.text() });
    }
    log.mockRestore();
  });

  test.each(FAULT_CODES)('%s is answered with the status of its table', (code) => {
    expect(bodies.get(code)?.status).toBe(PROBLEM_KINDS[code][0]);
  });

  test.each(FAULT_CODES)('%s is explained by the service with no figure left out', (code) => {
    const body = JSON.parse(bodies.get(code)?.text ?? '') as { readonly detail: string };
    expect(body.detail).toMatch(/^\S.+\.$/s);
    expect(body.detail).not.toMatch(HOLE);
  });

  test.each(FAULT_CODES)('%s is said by the page with no figure left out', (code) => {
    const faults = readProblem(JSON.parse(bodies.get(code)?.text ?? ''));
    const fault = faults?.find((one) => one.code === code);
    expect(fault).toBeDefined();
    const sentence = fault === undefined ? '' : en.faults[code](fault);
    expect(sentence).toMatch(/^\S.+\.$/s);
    expect(sentence).not.toMatch(HOLE);
  });

  test.each(['12 is undefined.', 'Give one of .', 'There is no “” size.'])(
    'a sentence with a hole such as %j is seen',
    (sentence) => {
      expect(sentence).toMatch(HOLE);
    },
  );
});
