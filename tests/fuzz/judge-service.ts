import fc from 'fast-check';
import { app, batch, ENDPOINTS } from '../../api/app.ts';
import { makeChecker, type OpenapiDocument } from '../support/ajv.ts';
import { drawInput } from '../support/draw-input.ts';
import { planRequests, washRequests, yardageRequests } from '../support/requests.ts';
import {
  kitsRequests,
  layoutRequests,
  mixedYardageRequests,
  stashRequests,
} from '../support/workroom-requests.ts';

/** What came of many requests to one address. */
export interface Tally {
  readonly path: string;
  readonly asked: number;
  /** How often each status came. */
  readonly statuses: Readonly<Record<number, number>>;
  /** What should not have been, a sentence each. */
  readonly wrong: readonly string[];
}

/** Requests that make sense, which few drawn from a schema alone do. */
const LIKELY: Readonly<Record<string, fc.Arbitrary<unknown>>> = {
  '/v1/plan': planRequests,
  '/v1/plan.svg': planRequests,
  '/v1/yardage': fc.oneof(yardageRequests, mixedYardageRequests),
  '/v1/wash-shrinkage': washRequests,
  '/v1/layout': layoutRequests,
  '/v1/layout.svg': layoutRequests,
  '/v1/stash': stashRequests,
  '/v1/kits': kitsRequests,
};

const strange = fc.constantFrom<unknown>(
  ...[null, true, '', ' ', '0x10', 'NaN', '1e999', -0, -1, 0, 0.5, 1e308, '8 1/0', '\ud800'],
  ...['__proto__', [], {}, [[]], '1,250', Number.MAX_SAFE_INTEGER, '9'.repeat(33)],
);

/**
 * Asks one address for inputs that make sense and inputs drawn from the document alone, every other one
 * with a part made strange,
 * and judges each answer by the document: what is valid by schema is answered 200 by a valid answer, or
 * 422 by faults of its meaning; what is invalid is answered 4xx by a valid problem, whose pointers lead
 * to something in the input or next to it. Never 5xx, never anything but a problem.
 */
export async function judgeService(
  document: OpenapiDocument,
  path: string,
  { count, seed }: { readonly count: number; readonly seed: number },
): Promise<Tally> {
  const { schemas } = document.components;
  const post = document.paths[path]?.['post'];
  const asked = post?.requestBody?.content['application/json']?.schema.$ref ?? '';
  const [media, answered] = Object.entries(post?.responses['200']?.content ?? {})[0] ?? [];
  const check = makeChecker(document, true);
  const [isInput, isProblem] = [check(asked), check('#/components/schemas/Problem')];
  const isAnswer = media === 'application/json' ? check(answered?.schema.$ref ?? '') : undefined;
  const drawn = drawInput({ $ref: asked }, schemas);
  const likely = LIKELY[path];
  const valid =
    likely === undefined
      ? drawn
      : fc.oneof({ weight: 2, arbitrary: likely }, { weight: 1, arbitrary: drawn });
  const inputs = fc.sample(mutate(valid), { seed, numRuns: count });
  const statuses: Record<number, number> = {};
  const wrong: string[] = [];
  for (const input of inputs) {
    const body = JSON.stringify(input);
    const headers = { 'Content-Type': 'application/json' };
    const answer = await app.request(path, { method: 'POST', headers, body });
    const text = await answer.text();
    statuses[answer.status] = (statuses[answer.status] ?? 0) + 1;
    const complain = (what: string) =>
      wrong.push(`${answer.status}: ${what}; ${body.slice(0, 300)}`);
    if (answer.status === 200) {
      // A batch is answered whatever is wrong inside one of its requests.
      const isTold = path === batch.path || isInput(JSON.parse(body));
      if (!isTold) complain('the document refuses this input');
      if (isAnswer !== undefined && !isAnswer(JSON.parse(text))) {
        complain(`the answer is not as described: ${JSON.stringify(isAnswer.errors?.[0])}`);
      }
      continue;
    }
    const problem: unknown = JSON.parse(text);
    if (![400, 413, 422].includes(answer.status)) complain('no such status is described');
    if (!isProblem(problem)) complain('the problem is not as described');
    complainOfPointers(problem, JSON.parse(body), complain);
  }
  return { path, asked: inputs.length, statuses, wrong };
}

/** Every address that takes a body. */
export const FUZZED: readonly string[] = [...ENDPOINTS.map(({ path }) => path), batch.path];

/** One in two with a part made strange. */
function mutate(valid: fc.Arbitrary<unknown>) {
  const change = fc.option(fc.tuple(fc.nat(), strange, fc.nat(5)), { freq: 2, nil: undefined });
  return fc
    .tuple(valid, change)
    .map(([input, how]) => (how === undefined ? input : spoil(input, how)));
}

function spoil(input: unknown, [where, value, how]: readonly [number, unknown, number]): unknown {
  const copy: unknown = structuredClone(input);
  const groups = listGroups(copy);
  const group = groups[where % Math.max(1, groups.length)];
  if (group === undefined) return value;
  const keys = Object.keys(group);
  const key = how === 0 ? `k${where}` : (keys[where % Math.max(1, keys.length)] ?? 'k');
  if (how === 1) Reflect.deleteProperty(group, key);
  else Reflect.set(group, key, value);
  return copy;
}

function listGroups(value: unknown): readonly object[] {
  if (typeof value !== 'object' || value === null) return [];
  return [value, ...Object.values(value).flatMap(listGroups)];
}

/** A pointer may name what is there, or what is missing from a group that is there. */
function complainOfPointers(problem: unknown, input: unknown, complain: (what: string) => void) {
  const { errors } = problem as { errors: readonly { code: string; pointer: string }[] };
  if (errors.length === 0) complain('the problem names no fault');
  for (const { pointer } of errors) {
    const path = pointer.split('/').slice(1, -1);
    const parent = path.reduce<unknown>(
      (part, key) =>
        typeof part === 'object' && part !== null
          ? Reflect.get(part, key.replaceAll('~1', '/').replaceAll('~0', '~'))
          : undefined,
      input,
    );
    if (parent === undefined) complain(`the pointer ${pointer} leads nowhere`);
  }
}
