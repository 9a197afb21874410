/**
 * Writes the golden pairs. Inputs that are there stay as they are and are answered anew; what is
 * missing of the wanted number is drawn with a fixed seed. An engine that was released keeps its
 * answers: where one would change, nothing is written, and the engine must be raised first.
 */
import { readFile, writeFile } from 'node:fs/promises';
import fc from 'fast-check';
import { ENGINE } from '#core/engine.ts';
import { app } from '../../api/app.ts';
import { planRequests, washRequests, yardageRequests } from '../support/requests.ts';
import {
  kitsRequests,
  layoutRequests,
  mixedYardageRequests,
  stashRequests,
} from '../support/workroom-requests.ts';
import {
  GOLDEN_FILES,
  type GoldenName,
  type Vector,
  type Vectors,
  writeVectors,
} from './vectors.ts';

/** Versions of the engine that are out in the world. */
const RELEASED: readonly string[] = [];

const SEED = 20_260_401;

const WANTED: Readonly<
  Record<GoldenName, readonly [count: number, requests: fc.Arbitrary<object>]>
> = {
  plan: [100, planRequests],
  yardage: [50, fc.oneof(yardageRequests, mixedYardageRequests)],
  'wash-shrinkage': [40, washRequests],
  layout: [20, layoutRequests],
  stash: [20, stashRequests],
  kits: [20, kitsRequests],
};

const fileOf = (name: GoldenName) => new URL(`${name}.json`, import.meta.url);

/** The pairs of one file as the sources are now. */
export async function makeVectors(name: GoldenName): Promise<Vectors> {
  const path = GOLDEN_FILES[name];
  const [count, requests] = WANTED[name];
  const before = await readVectors(name);
  const drawn = fc.sample(requests, { seed: SEED, numRuns: 4 * count });
  const inputs = [...(before?.vectors ?? []).map(({ input }) => input), ...drawn];
  const found = new Map<string, Vector>();
  for (const input of inputs) {
    if (found.size === count) break;
    const vector = await answer(path, input);
    if (vector !== undefined) found.set(JSON.stringify(input), vector);
  }
  return { engine: ENGINE, path, vectors: [...found.values()] };
}

/** The pairs of one file as they were written, where there are any. */
export async function readVectors(name: GoldenName): Promise<Vectors | undefined> {
  const text = await readFile(fileOf(name), 'utf8').catch(() => undefined);
  return text === undefined ? undefined : (JSON.parse(text) as Vectors);
}

/** The pair of an input that the service takes. */
async function answer(path: string, input: object): Promise<Vector | undefined> {
  const told = await app.request(path, {
    method: 'POST',
    headers: { 'Content-Type': 'application/json' },
    body: JSON.stringify(input),
  });
  if (told.status !== 200) return undefined;
  const text = await told.text();
  const value: unknown = JSON.parse(text);
  if (JSON.stringify(value) !== text || typeof value !== 'object' || value === null) {
    throw new Error(`An answer of ${path} does not survive being parsed.`);
  }
  return { input, answer: value };
}

/** What keeps new answers from being written: a sentence, or nothing. */
export function findBreach(
  before: Vectors | undefined,
  after: Vectors,
  released: readonly string[] = RELEASED,
): string | undefined {
  if (before?.engine !== after.engine || !released.includes(after.engine)) return undefined;
  const answers = new Map(after.vectors.map((one) => [JSON.stringify(one.input), one.answer]));
  const changed = before.vectors.filter(
    ({ input, answer }) =>
      JSON.stringify(answers.get(JSON.stringify(input))) !== JSON.stringify(answer),
  );
  if (changed.length === 0) return undefined;
  return `${changed.length} answers of ${after.path} would change, but engine ${after.engine} is released: raise ENGINE in api/core/engine.ts.`;
}

if (import.meta.main) {
  for (const name of Object.keys(GOLDEN_FILES) as GoldenName[]) {
    const [before, after] = [await readVectors(name), await makeVectors(name)];
    const breach = findBreach(before, after);
    if (breach !== undefined) throw new Error(breach);
    await writeFile(fileOf(name), writeVectors(after));
    console.log(`${String(after.vectors.length).padStart(4)} pairs of ${after.path}`);
  }
}
