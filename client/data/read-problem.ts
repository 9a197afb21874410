import * as v from 'valibot';
import type { FaultCode } from '#core/faults.ts';
import type { Fault } from '#core/outcome.ts';

const problemSchema = v.object({
  errors: v.array(
    v.object({
      code: v.string(),
      pointer: v.exactOptional(v.string()),
      expected: v.exactOptional(v.unknown()),
      received: v.exactOptional(v.unknown()),
    }),
  ),
});

/**
 * Reads the faults out of a problem that the service answered with. A code that a later service may bring is passed on:
 * whoever says it has a sentence for what is not known.
 *
 * @param body parsed JSON; anything.
 * @returns the faults, or nothing where it is no problem that this page knows.
 *
 * @example
 * readProblem({ errors: [{ code: 'empty', pointer: '/target/width' }] }) // => [{ code: 'empty', path: ['target', 'width'] }]
 * readProblem('no') // => undefined
 */
export function readProblem(body: unknown): readonly Fault[] | undefined {
  if (!v.is(problemSchema, body) || body.errors.length === 0) return undefined;
  return body.errors.map(({ code, pointer = '', expected, received }) => ({
    code: code as FaultCode,
    path: readPointer(pointer),
    ...(expected !== undefined && { expected: String(expected) }),
    ...(received !== undefined && { received: String(received) }),
  }));
}

/** JSON Pointer, RFC 6901 section 4: `~1` stands for `/` and `~0` for `~`, in that order. */
function readPointer(pointer: string): readonly string[] {
  return pointer
    .split('/')
    .slice(1)
    .map((part) => part.replaceAll('~1', '/').replaceAll('~0', '~'));
}
