import { describe, expect, test } from 'vitest';
import { app } from '../../../api/app.ts';
import { readProblem } from '../../../client/data/read-problem.ts';

describe('readProblem', () => {
  test('readProblem reads what the service really answers', async () => {
    const query = 'target.width=wide&target.height=50&block.seam=1&block.snipDepth=2&washes=99';
    const response = await app.request(`/v1/plan?${query}`);
    const faults = readProblem(await response.json()) ?? [];
    expect(response.status).toBe(422);
    expect(faults).toContainEqual(
      expect.objectContaining({
        code: 'too-large',
        path: ['washes'],
        expected: '50',
        received: '99',
      }),
    );
  });

  test('readProblem undoes the escapes of a JSON Pointer, RFC 6901 section 5', () => {
    const read = (pointer: string) =>
      readProblem({ errors: [{ code: 'empty', pointer }] })?.[0]?.path;
    expect(read('')).toEqual([]);
    expect(read('/a~1b')).toEqual(['a/b']);
    expect(read('/m~0n')).toEqual(['m~n']);
    expect(read('/~01')).toEqual(['~1']);
  });

  test.each([null, 'no', {}, { errors: [] }, { errors: [{ pointer: '/a' }] }, { errors: 'many' }])(
    'readProblem(%j) is nothing',
    (body) => {
      expect(readProblem(body)).toBeUndefined();
    },
  );
});
