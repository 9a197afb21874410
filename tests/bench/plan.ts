/**
 * What a plan costs: CPU of one request to `/v1/plan` beside one that only reads and validates the same
 * body. Both go the whole way from request to bytes, in interleaved rounds on one thread; medians of the
 * rounds are printed and nothing depends on them.
 */
import { Hono } from 'hono';
import { app } from '../../api/app.ts';
import type { Surroundings } from '../../api/http/limit-rate.ts';
import { planSchema } from '../../api/http/schemas/plan-schema.ts';
import { validate } from '../../api/http/validate.ts';

const ROUNDS = 9;
const REQUESTS = 200;
const WARM_UP = 400;

const small = { target: { width: 40, height: 50 } };
const large = {
  unit: 'cm',
  target: { bed: { width: 160, length: 200, drop: 35 } },
  cuts: Array.from({ length: 40 }, (_, at) => 10 + at / 2),
  layers: [
    { role: 'top', prints: Array.from({ length: 26 }, (_, at) => ({ id: `Print ${at}` })) },
    { role: 'middle', fabric: 'cotton-batting', width: 240 },
    { role: 'backing', fabric: 'flannel', shrink: { length: 6, width: 3 } },
  ],
  washes: 5,
  explain: true,
};

const validating = new Hono<Surroundings>();
validating.on(
  ['GET', 'POST'],
  '/v1/plan',
  validate({ schema: planSchema, resolve: () => ({ ok: false, faults: [] }) }),
  (context) => context.json(context.req.valid('query')),
);

const headers = { 'Content-Type': 'application/json' };
const post = (input: object) => () =>
  new Request('http://localhost/v1/plan', { method: 'POST', headers, body: JSON.stringify(input) });
const get = () => new Request('http://localhost/v1/plan?target.width=40&target.height=50');

const lanes = [
  { name: 'POST, a wish of two lengths', make: post(small) },
  { name: 'GET, the same at its canonical address', make: get },
  { name: 'POST, 3 layers, 26 prints, 40 cuts, explained', make: post(large) },
];

for (const { name, make } of lanes) {
  await measure(validating, make, WARM_UP);
  await measure(app, make, WARM_UP);
  const rounds: { readonly bare: Lap; readonly whole: Lap }[] = [];
  for (let round = 0; round < ROUNDS; round += 1) {
    rounds.push({
      bare: await measure(validating, make, REQUESTS),
      whole: await measure(app, make, REQUESTS),
    });
  }
  const bare = medianOf(rounds.map((round) => round.bare.cpu));
  const whole = medianOf(rounds.map((round) => round.whole.cpu));
  const p99 = medianOf(rounds.map((round) => round.whole.p99));
  console.log(name);
  console.log(`  reads and validates  ${bare.toFixed(3)} ms of CPU a request`);
  console.log(`  plans                ${whole.toFixed(3)} ms of CPU a request (aim: at most 3)`);
  console.log(`  ratio                ${(whole / bare).toFixed(1)}`);
  console.log(`  p99 of a plan        ${p99.toFixed(3)} ms by the clock`);
}

interface Lap {
  /** Mean CPU of one request, ms, collection of garbage included. */
  readonly cpu: number;
  /** By the clock, ms. */
  readonly p99: number;
}

async function measure(
  target: Hono<Surroundings>,
  make: () => Request,
  count: number,
): Promise<Lap> {
  const requests = Array.from({ length: count }, make);
  const laps: number[] = [];
  const before = process.cpuUsage();
  for (const request of requests) {
    const start = performance.now();
    const answer = await target.fetch(request);
    await answer.arrayBuffer();
    laps.push(performance.now() - start);
    if (answer.status !== 200) throw new Error(`The bench was answered ${answer.status}.`);
  }
  const { user, system } = process.cpuUsage(before);
  laps.sort((one, other) => one - other);
  return { cpu: (user + system) / 1000 / count, p99: laps[Math.floor(0.99 * count)] ?? Number.NaN };
}

function medianOf(values: readonly number[]): number {
  const sorted = [...values].sort((one, other) => one - other);
  return sorted[Math.floor(sorted.length / 2)] ?? Number.NaN;
}
