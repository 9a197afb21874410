import { describe, expect, test } from 'vitest';
import type { Fault } from '#core/outcome.ts';
import { answerProblem } from '../../../api/http/problem.ts';

const spare: Fault = { code: 'too-large', path: ['spare'], expected: 100, received: 300 };
const foo: Fault = { code: 'unknown-key', path: ['a/b'] };

describe('answerProblem', () => {
  test('answers one fault as RFC 9457 has it', async () => {
    const answer = answerProblem([spare]);
    expect(answer.status).toBe(422);
    expect(answer.headers.get('content-type')).toBe('application/problem+json');
    expect(await answer.json()).toEqual({
      type: '/problems/too-large',
      title: 'A value is too large',
      status: 422,
      detail: 'spare is 300, which is too large: the most is 100.',
      errors: [
        {
          code: 'too-large',
          pointer: '/spare',
          detail: 'spare is 300, which is too large: the most is 100.',
          expected: 100,
          received: 300,
        },
      ],
    });
  });
  test('answers several as one problem that tells each', async () => {
    const body = await answerProblem([spare, foo], { fromQuery: true }).json();
    expect(body).toMatchObject({
      type: '/problems/several-faults',
      detail: '2 things are wrong; each stands in errors with what would make it right.',
      errors: [
        { code: 'too-large', parameter: 'spare' },
        { code: 'unknown-key', pointer: '/a~1b', parameter: 'a/b' },
      ],
    });
  });
  test('keeps the kind of several faults of one code', async () => {
    expect(await answerProblem([foo, { ...foo, path: ['c'] }]).json()).toMatchObject({
      type: '/problems/unknown-key',
    });
  });
  test('tells 50 and counts the rest', async () => {
    const body = await answerProblem(Array.from({ length: 70 }, () => foo)).json();
    expect(body).toMatchObject({
      detail: '70 things are wrong; the first 50 stand in errors with what would make it right.',
    });
    expect(body).toHaveProperty('errors.length', 50);
  });
  test('gives back 40 characters of what was sent', async () => {
    const received = 'y'.repeat(500);
    const body = await answerProblem([{ code: 'not-a-length', path: ['a'], received }]).json();
    expect(body).toHaveProperty('errors.0.received', `${'y'.repeat(40)}…`);
  });
  test('adds headers and an instance where they are given', async () => {
    const answer = answerProblem([foo], { headers: { Allow: 'GET' }, instance: 'urn:x' });
    expect(answer.headers.get('allow')).toBe('GET');
    expect(await answer.json()).toHaveProperty('instance', 'urn:x');
  });
});
