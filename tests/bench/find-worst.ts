import fc from 'fast-check';
import type { BoundEndpoint } from '../../api/http/bind-endpoint.ts';
import { planRequests, washRequests, yardageRequests } from '../support/requests.ts';
import {
  kitsRequests,
  layoutRequests,
  mixedYardageRequests,
  stashRequests,
} from '../support/workroom-requests.ts';
import { EXTREMES } from './extremes.ts';

/** An input and the CPU from it to the bytes of its answer, ms. */
export interface Priced {
  readonly input: object;
  readonly cost: number;
}

/** How long to search. */
export interface Hunt {
  readonly seed: number;
  /** Changes of one number that are tried, beside the inputs to start from. */
  readonly tries: number;
  /** Requests that make sense among the inputs to start from. */
  readonly likely: number;
  /** Runs of each input, of which the least counts, as others disturb a run. */
  readonly runs: number;
  /** From this on, ms, nothing dearer is looked for. */
  readonly enough: number;
}

const LIKELY: Readonly<Record<string, fc.Arbitrary<object>>> = {
  '/v1/plan': planRequests,
  '/v1/yardage': fc.oneof(yardageRequests, mixedYardageRequests),
  '/v1/wash-shrinkage': washRequests,
  '/v1/layout': layoutRequests,
  '/v1/stash': stashRequests,
  '/v1/kits': kitsRequests,
};

/**
 * Searches for the dearest input that an endpoint takes: from extremes written by hand and from requests
 * that make sense, it climbs by changing one number at a time and keeps what costs more.
 */
export function findWorst(endpoint: BoundEndpoint, hunt: Hunt): Priced {
  const { seed, tries, likely, runs, enough } = hunt;
  const kind = endpoint.path.replace('.svg', '');
  let worst: Priced = { input: {}, cost: 0 };
  const consider = (input: object) => {
    const cost = price(endpoint, input, { runs, enough });
    if (cost !== undefined && cost > worst.cost) worst = { input, cost };
  };
  const draw = LIKELY[kind] ?? fc.constant({});
  const starts = [...(EXTREMES[kind] ?? []), ...fc.sample(draw, { seed, numRuns: likely })];
  for (const input of starts) consider(input);
  const steps = fc.tuple(fc.nat(), fc.constantFrom(0.5, 0.9, 1.1, 2, 3));
  for (const [where, factor] of fc.sample(steps, { seed, numRuns: tries })) {
    if (worst.cost < enough) consider(change(worst.input, where, factor));
  }
  const again = price(endpoint, worst.input, { runs: 3 * runs, enough });
  return { ...worst, cost: again ?? worst.cost };
}

/** The least CPU of a few runs, ms; nothing where the input is refused. */
function price(
  endpoint: BoundEndpoint,
  input: object,
  { runs, enough }: Pick<Hunt, 'runs' | 'enough'>,
): number | undefined {
  let least = Number.POSITIVE_INFINITY;
  for (let run = 0; run < runs; run += 1) {
    const before = process.cpuUsage();
    const understood = endpoint.understand(input);
    if (!understood.ok) return undefined;
    understood.value.write();
    const { user, system } = process.cpuUsage(before);
    least = Math.min(least, (user + system) / 1000);
    if (least > enough) break;
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
