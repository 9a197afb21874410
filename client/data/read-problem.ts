import * as v from 'valibot';
import { FAULT_CODES } from '#core/faults.ts';
import type { Fault } from '#core/outcome.ts';

const plain = v.exactOptional(v.union([v.string(), v.pipe(v.number(), v.minValue(-1e15), v.maxValue(1e15))]));

const problemSchema = v.object({
  errors: v.pipe(
    v.array(
      v.object({
        code: v.picklist(FAULT_CODES),
        pointer: v.exactOptional(v.string(), ''),
        expected: v.exactOptional(v.unknown()),
        received: plain,
      }),
    ),
    v.minLength(1),
  ),
});

/**
 * Reads the faults out of a problem that the service answered with.
 *
 * @param body parsed JSON; anything.
 * @returns the faults, or nothing where it is no problem that this page knows.
 *
 * @example
 * readProblem({ errors: [{ code: 'empty', pointer: '/target/width' }] }) // => [{ code: 'empty', path: ['target', 'width'] }]
 * readProblem('no') // => undefined
 */
export function readProblem(body: unknown): readonly Fault[] | undefined {
  if (!v.is(problemSchema, body)) return undefined;
  return body.errors.map(({ code, pointer = '', expected, received }) => ({
    code,
    path: readPointer(pointer),
    ...((typeof expected === 'string' || typeof expected === 'number') && { expected }),
    ...(received !== undefined && { received }),
  }));
}

/** JSON Pointer, RFC 6901 section 4: `~1` stands for `/` and `~0` for `~`, in that order. */
function readPointer(pointer: string): readonly string[] {
  return pointer
    .split('/')
    .slice(1)
    .map((part) => part.replaceAll('~1', '/').replaceAll('~0', '~'));
}
