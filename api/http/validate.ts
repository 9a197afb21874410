import { zValidator } from '@hono/zod-validator';
import type { Env, MiddlewareHandler } from 'hono';
import type { InferInput } from 'hono/validator';
import type { ZodSafeParseResult } from 'zod';
import type { Endpoint, Resolved } from './endpoint.ts';
import { findFaults, findMore } from './find-faults.ts';
import { answerProblem } from './problem.ts';
import { readInput, readsQuery } from './read-input.ts';

/** What a handler behind {@link validate} finds under `valid('query')`, however it came. */
export interface Validated<Request> {
  in: { query?: InferInput<unknown, 'query'> };
  out: { query: Request };
}

/**
 * The one wrapper of the validator: it hands on an input that fits the schema and answers a problem for
 * any other. What the validator's library would read or answer by itself never happens: it would take a
 * body of an unknown kind for an empty one, and tell faults in a shape of its own.
 */
export function validate<Request, Understood extends Resolved>(
  endpoint: Pick<Endpoint<Request, Understood>, 'schema' | 'resolve'>,
): MiddlewareHandler<Env, string, Validated<Request>> {
  return async function validateInput(context, next) {
    const schema = endpoint.schema();
    const read = await readInput(context.req.raw);
    const fromQuery = readsQuery(context.req.method);
    if (!read.ok) return answerProblem(findMore(endpoint, read), { fromQuery });
    const check = zValidator(
      'query',
      schema,
      (result) =>
        result.success ? undefined : answerProblem(findFaults(endpoint, read.value), { fromQuery }),
      // The validator asks for a result of the large library; none of its methods is used.
      {
        validationFunction: () => schema.safeParse(read.value) as ZodSafeParseResult<Request>,
      },
    );
    return check(context, next);
  };
}
