/** What forty measured swatches cost: median and 99th percentile of processor time, printed, never a gate. */
import { predictWash } from '#core/wash.ts';
import { resolveWash } from '#core/wish/resolve-wash.ts';

const ROUNDS = 9;
const REQUESTS = 200;
const FABRICS = ['flannel', 'quilting-cotton', 'sandwich'] as const;

const request = {
  swatches: Array.from({ length: 40 }, (_, index) => ({
    fabric: FABRICS[index % 3] ?? 'flannel',
    direction: index % 2 === 0 ? ('length' as const) : ('width' as const),
    before: 10,
    after: 9.4 + ((index * 37) % 50) / 100,
    washes: 1 + (index % 4),
  })),
  sewn: { width: 42, height: 52 },
  wanted: { width: 40, height: 50 },
};

function answer(): number {
  const started = process.cpuUsage();
  for (let index = 0; index < REQUESTS; index += 1) {
    const read = resolveWash(request);
    if (!read.ok) throw new Error(JSON.stringify(read.faults));
    JSON.stringify(predictWash(read.value));
  }
  const { user, system } = process.cpuUsage(started);
  return (user + system) / 1000 / REQUESTS;
}

answer();
const rounds = Array.from({ length: ROUNDS }, answer).toSorted((one, other) => one - other);
console.log('Wash and shrinkage, 40 swatches of three cloths, four wash counts');
console.log(
  `  median  ${rounds[Math.floor(ROUNDS / 2)]?.toFixed(3)} ms of CPU a request (aim: at most 0.5)`,
);
console.log(`  slowest ${rounds.at(-1)?.toFixed(3)} ms of CPU a request, of ${ROUNDS} rounds`);
