import { describe, expect, test } from 'vitest';
import { app } from '../../../api/app.ts';
import { ProblemError, readFailure, UnreachableError } from '../../../client/api/problem-error.ts';

describe('readFailure', () => {
  test('makes an error of a problem of the service, with every fault', async () => {
    const failure = await readFailure(await app.request('/v1/plan?nonsense=1&spare=300'));
    if (!(failure instanceof ProblemError)) throw failure;
    expect(failure.problem).toMatchObject({ status: 422, type: '/problems/several-faults' });
    expect(failure.message).toBe(failure.problem.detail);
    expect(failure.problem.errors.map(({ pointer }) => pointer)).toEqual(
      expect.arrayContaining(['/nonsense', '/spare', '/target']),
    );
  });
  test.each([
    ['a page of somebody else', '<h1>Bad gateway</h1>', 'text/html'],
    ['a problem of another make', '{"title":"No"}', 'application/problem+json'],
    ['half a problem', '{"detail":', 'application/problem+json'],
  ])('takes %s for nobody reached', async (_, body, type) => {
    const answer = new Response(body, { status: 502, headers: { 'Content-Type': type } });
    const failure = await readFailure(answer);
    expect(failure).toBeInstanceOf(UnreachableError);
    expect(failure.message).toContain('502');
  });
});
