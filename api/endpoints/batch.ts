import type { Hono } from 'hono';
import * as z from 'zod/mini';
import type { BatchRequest } from '#core/contract.ts';
import { ENGINE } from '#core/engine.ts';
import { SIZE_LIMITS } from '#core/limits.ts';
import { allowMethods } from '../http/allow-methods.ts';
import { nameAnswer } from '../http/answer.ts';
import { describeCrash } from '../http/answer-crash.ts';
import type { BoundEndpoint, PricedAnswer } from '../http/bind-endpoint.ts';
import { explainIssues } from '../http/explain-issues.ts';
import { UNCACHED_HEADERS } from '../http/headers.ts';
import { limitRate, type Surroundings } from '../http/limit-rate.ts';
import { once } from '../http/once.ts';
import { answerProblem, type ProblemBody, writeProblem } from '../http/problem.ts';
import { readInput } from '../http/read-input.ts';
import type { Same } from '../http/same.ts';

/** Many requests of any kind in one body. */
export interface BoundBatch {
  readonly path: '/v1/batch';
  readonly summary: string;
  readonly schema: () => z.ZodMiniType<BatchRequest>;
  readonly mount: (app: Hono<Surroundings>) => void;
}

type Judged = PricedAnswer | ProblemBody;

const path = '/v1/batch';

/**
 * Answers many requests at once, each in its place: an answer to the byte as its own endpoint would
 * give it, or a problem. What is wrong with one harms no other; only the sum of all costs has a limit,
 * and a batch over it is refused before anything is reckoned.
 */
export function bindBatch(endpoints: readonly BoundEndpoint[]): BoundBatch {
  const schema = once(() => makeSchema(endpoints.map((one) => one.path)));
  const judge = ({ path, input }: BatchRequest['requests'][number]): Judged => {
    const endpoint = endpoints.find((one) => one.path === path);
    const understood = guard(() => endpoint?.understand(input));
    if (understood === undefined) return describeCrash(`No endpoint is at ${path}.`);
    if ('status' in understood) return understood;
    return understood.ok ? understood.value : writeProblem(understood.faults);
  };
  const mount = (app: Hono<Surroundings>) => {
    app.post(path, limitRate(), async ({ req }) => {
      const read = await readInput(req.raw);
      if (!read.ok) return answerProblem(read.faults);
      const asked = schema().safeParse(read.value);
      if (!asked.success) return answerProblem(explainIssues(asked.error.issues, read.value));
      const judged = asked.data.requests.map(judge);
      const cost = judged.reduce((sum, one) => sum + ('cost' in one ? one.cost : 1), 0);
      if (cost > SIZE_LIMITS.batchCost) return answerProblem([tellExcess(cost)]);
      return answerAll(judged, cost);
    });
    app.all(path, allowMethods(['POST']));
  };
  const summary = `Up to ${SIZE_LIMITS.batch} requests of any kind in one body, each answered in its place.`;
  return { path, summary, schema, mount };
}

function makeSchema(paths: readonly string[]) {
  const requestSchema = z
    .strictObject({
      path: z
        .enum(paths)
        .register(z.globalRegistry, { description: 'Address of the endpoint that is asked' }),
      input: z
        .looseObject({})
        .register(z.globalRegistry, { description: 'What its own body would say' }),
    })
    .register(z.globalRegistry, { description: 'One request' });
  const schema = z.strictObject({
    requests: z
      .array(requestSchema)
      .check(z.minLength(1), z.maxLength(SIZE_LIMITS.batch))
      .register(z.globalRegistry, { description: 'What is asked, in the order of the answers' }),
  });
  true satisfies Same<z.infer<typeof schema>, BatchRequest>;
  return schema;
}

function tellExcess(cost: number) {
  const expected = `${SIZE_LIMITS.batchCost} points of cost`;
  return { code: 'too-large', path: ['requests'], expected, received: Math.ceil(cost) } as const;
}

async function answerAll(judged: readonly Judged[], cost: number): Promise<Response> {
  const answers = await Promise.all(judged.map(writeOne));
  const head = JSON.stringify({ engine: ENGINE, cost: Math.ceil(cost) }).slice(0, -1);
  return new Response(`${head},"answers":[${answers.join(',')}]}`, {
    headers: { ...UNCACHED_HEADERS, 'Content-Type': 'application/json' },
  });
}

async function writeOne(judged: Judged): Promise<string> {
  if ('status' in judged) return writeFailure(judged);
  const body = guard(judged.write);
  if (typeof body !== 'string') return writeFailure(body);
  const { query, mediaType } = judged;
  const told = { status: 200, path: judged.path, etag: await nameAnswer(judged), query };
  // The answer stands there as its endpoint wrote it, to the byte; what is no JSON stands as text.
  const answer = mediaType === 'application/json' ? body : JSON.stringify(body);
  return `${JSON.stringify(told).slice(0, -1)},"answer":${answer}}`;
}

function writeFailure(problem: ProblemBody): string {
  return JSON.stringify({ status: problem.status, problem });
}

/** A mistake of the service itself harms one answer alone. */
function guard<Found>(find: () => Found): Found | ProblemBody {
  try {
    return find();
  } catch (error) {
    return describeCrash(error);
  }
}
