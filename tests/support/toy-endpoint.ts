import { Hono } from 'hono';
import { z } from 'zod';
import { fail, type Outcome, succeed } from '#core/outcome.ts';
import { answerCrash } from '../../api/http/answer-crash.ts';
import { type BoundEndpoint, bindEndpoint } from '../../api/http/bind-endpoint.ts';
import type { Surroundings } from '../../api/http/limit-rate.ts';

/** What the toy is asked: so many of something, and whether to break down over it. */
export interface ToyRequest {
  readonly id: string;
  readonly count?: number;
  readonly list?: readonly number[];
  readonly crash?: boolean;
}

interface ToyUnderstood {
  readonly query: string;
  readonly request: ToyRequest;
}

export const toySchema: z.ZodType<ToyRequest> = z.strictObject({
  id: z.string().min(1).max(5),
  count: z.int().min(1).max(9).exactOptional(),
  list: z.array(z.number().max(9)).max(3).exactOptional(),
  crash: z.boolean().exactOptional(),
});

/** One rule that no schema says: `count` is not 7. */
export function resolveToy(request: ToyRequest): Outcome<ToyUnderstood> {
  const { id, count = 1, list = [], crash = false } = request;
  if (count === 7) return fail([{ code: 'too-large', path: ['count'], expected: 6, received: 7 }]);
  const places = list.map((value, at) => `&list.${at}=${value}`).join('');
  const query = `id=${encodeURIComponent(id)}${count === 1 ? '' : `&count=${count}`}${places}${crash ? '&crash=true' : ''}`;
  return succeed({ query, request: { id, count, list, crash } });
}

/** An endpoint that is nothing but the road that all endpoints go. */
export function bindToy(onReckon: () => void = () => undefined): BoundEndpoint {
  const write = ({ request }: ToyUnderstood) => {
    onReckon();
    if (request.crash === true) throw new Error('the inside');
    return JSON.stringify({ input: request });
  };
  return bindEndpoint({
    path: '/toy',
    summary: 'A toy.',
    schema: () => toySchema,
    resolve: resolveToy,
    mediaType: 'application/json',
    write,
  });
}

/** A service of that endpoint alone. */
export function makeToyApp(onReckon: () => void = () => undefined): Hono<Surroundings> {
  const app = new Hono<Surroundings>();
  bindToy(onReckon).mount(app);
  app.onError(answerCrash);
  return app;
}
