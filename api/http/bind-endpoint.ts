import type { Hono } from 'hono';
import type * as z from 'zod';
import { ENGINE } from '#core/engine.ts';
import { allowMethods } from './allow-methods.ts';
import { answer } from './answer.ts';
import type { Endpoint, Resolved } from './endpoint.ts';
import { answerProblem } from './problem.ts';
import { readsQuery } from './read-input.ts';
import { validate } from './validate.ts';

/** An endpoint whose own types no longer matter: it can stand in a table with others. */
export interface BoundEndpoint {
  readonly path: `/${string}`;
  readonly summary: string;
  readonly schema: z.ZodType;
  readonly mediaType: string;
  /** Puts it at its address, for every method that may ask it. */
  readonly mount: (app: Hono) => void;
}

/**
 * Makes an endpoint ready to be mounted: input, schema, core, answer, headers, and no step back.
 */
export function bindEndpoint<Request, Understood extends Resolved>(
  endpoint: Endpoint<Request, Understood>,
): BoundEndpoint {
  const { path, summary, schema, resolve, mediaType, write } = endpoint;
  const mount = (app: Hono) => {
    app.on(['GET', 'POST', 'QUERY'], path, validate(endpoint), (context) => {
      const understood = resolve(context.req.valid('query'));
      if (!understood.ok) {
        return answerProblem(understood.faults, { fromQuery: readsQuery(context.req.method) });
      }
      return answer(context.req.raw, {
        self: `${path}?${understood.value.query}`,
        engine: ENGINE,
        mediaType,
        write: () => write(understood.value),
      });
    });
    app.all(path, allowMethods(['GET', 'HEAD', 'POST', 'QUERY']));
  };
  return { path, summary, schema, mediaType, mount };
}
