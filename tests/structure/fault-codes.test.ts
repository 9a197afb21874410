import { beforeAll, describe, expect, test, vi } from 'vitest';
import { FAULT_CODES, type FaultCode } from '#core/faults.ts';
import type { Fault } from '#core/outcome.ts';
import { PROBLEM_KINDS } from '../../api/http/problem-kinds.ts';
import { PROBLEM_MEANINGS } from '../../api/pages/problem-meanings.ts';
import { readProblem } from '../../client/data/read-problem.ts';
import { kitsSource } from '../../client/text/kits/source.ts';
import { type Language, loadText } from '../../client/text/languages.ts';
import { en } from '../../client/text/shared/en.ts';
import { sharedSource } from '../../client/text/shared/source.ts';
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

const LANGUAGES: readonly Language[] = ['en', 'es', 'de', 'fr'];

/** The sentence of an element for a fault; what only kits ask for is said by them. */
async function say(language: Language, fault: Fault): Promise<string> {
  const own: Partial<typeof en.faults> = (await loadText(kitsSource, language)).faults;
  const { faults } = await loadText(sharedSource, language);
  return (own[fault.code] ?? faults[fault.code])(fault);
}

/** A sentence with a figure left out shows as one of these. */
const HOLE = /undefined|null|NaN|\[object|“”|„“|«\s*»| {2}|\bof \.|\bis \./;

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

  test.each(FAULT_CODES)(
    '%s is said by the page in every language, with no figure left out',
    async (code) => {
      const faults = readProblem(JSON.parse(bodies.get(code)?.text ?? ''));
      const fault = faults?.find((one) => one.code === code);
      if (fault === undefined) throw new Error(`The page does not read ${code}.`);
      const said = await Promise.all(LANGUAGES.map((language) => say(language, fault)));
      for (const sentence of said) {
        expect(sentence).toMatch(/^\S.+\.$/s);
        expect(sentence).not.toMatch(HOLE);
      }
      expect(new Set(said).size).toBe(LANGUAGES.length);
    },
  );

  test.each(['12 is undefined.', 'Give one of .', 'There is no “” size.'])(
    'a sentence with a hole such as %j is seen',
    (sentence) => {
      expect(sentence).toMatch(HOLE);
    },
  );
});
