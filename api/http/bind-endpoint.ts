import type { Hono } from 'hono';
import type * as z from 'zod/mini';
import { ENGINE } from '#core/engine.ts';
import { SIZE_LIMITS } from '#core/limits.ts';
import { fail, type Outcome, succeed } from '#core/outcome.ts';
import { allowMethods } from './allow-methods.ts';
import { answer, type NamedAnswer } from './answer.ts';
import type { Endpoint, Resolved } from './endpoint.ts';
import { findFaults, findMore } from './find-faults.ts';
import { limitRate, type Surroundings } from './limit-rate.ts';
import { answerProblem } from './problem.ts';
import { readsQuery } from './read-input.ts';
import { RETIREMENTS, tellRetirement } from './retirement.ts';
import { TEXT_KEYS } from './schemas/wire-schemas.ts';
import { sendAlong } from './send-along.ts';
import { unfoldQuery } from './unfold-query.ts';
import { validate } from './validate.ts';

/** Points of an endpoint that says nothing of its cost. */
const USUAL_COST = 10;

/** An answer that is named and priced before it is reckoned. */
export interface PricedAnswer extends NamedAnswer {
  /** Points, as {@link Endpoint.cost} counts them. */
  readonly cost: number;
}

/** An endpoint whose own types no longer matter: it can stand in a table with others. */
export interface BoundEndpoint {
  readonly path: `/${string}`;
  readonly summary: string;
  readonly schema: () => z.ZodMiniType;
  readonly mediaType: string;
  /** Understands an input without reckoning: its answer by name, or every fault. */
  readonly understand: (input: unknown) => Outcome<PricedAnswer>;
  /** The same of a flat query, without its question mark. */
  readonly understandQuery: (query: string) => Outcome<PricedAnswer>;
  /** Puts it at its address, for every method that may ask it. */
  readonly mount: (app: Hono<Surroundings>) => void;
}

/**
 * Makes an endpoint ready to be mounted: input, schema, core, answer, headers, and no step back.
 */
export function bindEndpoint<Request, Understood extends Resolved>(
  endpoint: Endpoint<Request, Understood>,
): BoundEndpoint {
  const { path, summary, schema, resolve, mediaType, write, cost = () => USUAL_COST } = endpoint;
  const name = (request: Request): Outcome<PricedAnswer> => {
    const understood = resolve(request);
    if (!understood.ok) return understood;
    const { value } = understood;
    const { query } = value;
    // Whatever may be asked alone may also be asked in a batch of its own.
    const points = Math.min(cost(value), SIZE_LIMITS.batchCost);
    const told = { path, query, engine: ENGINE, mediaType, cost: points };
    return succeed({ ...told, write: () => write(value) });
  };
  const understand = (input: unknown) => {
    const judged = schema().safeParse(input);
    return judged.success ? name(judged.data) : fail(findFaults(endpoint, input));
  };
  const understandQuery = (query: string) => {
    const read = unfoldQuery(query, TEXT_KEYS);
    return read.ok ? understand(read.value) : fail(findMore(endpoint, read));
  };
  const mount = (app: Hono<Surroundings>) => {
    const retirement = RETIREMENTS[path];
    if (retirement !== undefined) app.use(path, sendAlong(tellRetirement(retirement)));
    app.on(['GET', 'POST', 'QUERY'], path, limitRate(), validate(endpoint), (context) => {
      const named = name(context.req.valid('query'));
      const { raw } = context.req;
      if (!named.ok) return answerProblem(named.faults, { fromQuery: readsQuery(raw.method) });
      return answer(raw, named.value);
    });
    app.all(path, allowMethods(['GET', 'HEAD', 'POST', 'QUERY']));
  };
  return { path, summary, schema, mediaType, understand, understandQuery, mount };
}
