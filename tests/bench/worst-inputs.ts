/**
 * Searches for the dearest input that each endpoint takes: from extremes written by hand and from
 * requests that make sense, it climbs by changing one part at a time and keeps what costs more CPU.
 * What was found is printed, dearest first; nothing depends on it. The platform's free limit is 10 ms.
 */
import fc from 'fast-check';
import { ENDPOINTS } from '../../api/app.ts';
import type { BoundEndpoint } from '../../api/http/bind-endpoint.ts';
import { planRequests, washRequests, yardageRequests } from '../support/requests.ts';
import {
  kitsRequests,
  layoutRequests,
  mixedYardageRequests,
  stashRequests,
} from '../support/workroom-requests.ts';
import { EXTREMES } from './extremes.ts';

const SEED = Number(process.env['SEED'] ?? 20_260_401);
const TRIES = Number(process.env['TRIES'] ?? 150);
const FREE_LIMIT = 10;

const LIKELY: Readonly<Record<string, fc.Arbitrary<object>>> = {
  '/v1/plan': planRequests,
  '/v1/plan.svg': planRequests,
  '/v1/yardage': fc.oneof(yardageRequests, mixedYardageRequests),
  '/v1/yardage.svg': fc.oneof(yardageRequests, mixedYardageRequests),
  '/v1/wash-shrinkage': washRequests,
  '/v1/layout': layoutRequests,
  '/v1/layout.svg': layoutRequests,
  '/v1/stash': stashRequests,
  '/v1/kits': kitsRequests,
};

for (const endpoint of ENDPOINTS) {
  const starts = [
    ...(EXTREMES[endpoint.path.replace('.svg', '')] ?? []),
    ...fc.sample(LIKELY[endpoint.path] ?? fc.constant({}), { seed: SEED, numRuns: 20 }),
  ];
  const worst = climb(endpoint, starts);
  const judged = worst.cost > FREE_LIMIT ? `over ${FREE_LIMIT} ms` : '';
  console.log(
    `${endpoint.path.padEnd(20)} ${worst.cost.toFixed(2).padStart(8)} ms of CPU ${judged}`,
  );
  console.log(`  ${JSON.stringify(worst.input).slice(0, 240)}`);
}

interface Priced {
  readonly input: object;
  readonly cost: number;
}

function climb(endpoint: BoundEndpoint, starts: readonly object[]): Priced {
  let worst: Priced = { input: {}, cost: 0 };
  const consider = (input: object) => {
    const cost = price(endpoint, input);
    if (cost !== undefined && cost > worst.cost) worst = { input, cost };
  };
  for (const input of starts) consider(input);
  const steps = fc.sample(fc.tuple(fc.nat(), fc.constantFrom(0.5, 0.9, 1.1, 2, 3)), {
    seed: SEED,
    numRuns: TRIES,
  });
  // What is twenty times too dear needs no further search.
  for (const [where, factor] of steps) {
    if (worst.cost < 20 * FREE_LIMIT) consider(change(worst.input, where, factor));
  }
  return { ...worst, cost: price(endpoint, worst.input, 9) ?? worst.cost };
}

/** CPU from an input to the bytes of its answer, ms: the least of a few runs, as others disturb a run. */
function price(endpoint: BoundEndpoint, input: object, runs = 3): number | undefined {
  let least = Number.POSITIVE_INFINITY;
  for (let run = 0; run < runs; run += 1) {
    const before = process.cpuUsage();
    const understood = endpoint.understand(input);
    if (!understood.ok) return undefined;
    understood.value.write();
    const { user, system } = process.cpuUsage(before);
    least = Math.min(least, (user + system) / 1000);
    if (least > 20 * FREE_LIMIT) break;
  }
  return least;
}

/** The same input with one number in it made larger or smaller. */
function change(input: object, where: number, factor: number): object {
  const copy: object = structuredClone(input);
  const places = listNumbers(copy);
  const place = places[where % Math.max(1, places.length)];
  if (place === undefined) return copy;
  const [group, key] = place;
  const value = Number(Reflect.get(group, key)) * factor;
  Reflect.set(group, key, Number.isInteger(Reflect.get(group, key)) ? Math.round(value) : value);
  return copy;
}

function listNumbers(value: unknown): readonly (readonly [object, string])[] {
  if (typeof value !== 'object' || value === null) return [];
  return Object.entries(value).flatMap(([key, part]) =>
    typeof part === 'number' ? [[value, key] as const] : listNumbers(part),
  );
}
