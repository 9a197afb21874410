import { describe, expect, test, vi } from 'vitest';
import { FAULT_CODES } from '#core/faults.ts';
import { app } from '../../api/app.ts';
import { describeFault } from '../../api/http/describe-fault.ts';
import { PROBLEM_KINDS } from '../../api/http/problem-kinds.ts';
import { FAULT_CASES } from './fault-cases.ts';

test('FAULT_CASES has a case for each fault code and for nothing else', () => {
  expect(Object.keys(FAULT_CASES).sort()).toEqual([...FAULT_CODES].sort());
});

describe.each(FAULT_CODES)('%s', (code) => {
  test('is provoked by its case, alone, with its own status, sentence and page', async () => {
    const log = vi.spyOn(console, 'error').mockImplementation(() => undefined);
    const answer = await FAULT_CASES[code]();
    log.mockRestore();
    expect(answer.headers.get('content-type')).toBe('application/problem+json');
    expect(answer.headers.get('access-control-allow-origin')).toBe('*');
    const body = (await answer.json()) as Problem;
    expect(body.errors.map((error) => error.code)).toEqual([code]);
    expect([answer.status, body.status]).toEqual(Array(2).fill(PROBLEM_KINDS[code][0]));
    expect(body.title).toBe(PROBLEM_KINDS[code][1]);
    expect(body.detail).toMatch(/^[\S].{15,}\.$/);
    expect((await app.request(body.type)).status).toBe(200);
  });

  test('has a sentence that no other code has', () => {
    const words = { path: ['x'], expected: 'E', received: 'R' };
    const same = FAULT_CODES.filter(
      (other) => describeFault({ code: other, ...words }) === describeFault({ code, ...words }),
    );
    expect(same).toEqual([code]);
  });
});

interface Problem {
  readonly type: string;
  readonly title: string;
  readonly status: number;
  readonly detail: string;
  readonly errors: readonly { readonly code: string }[];
}
