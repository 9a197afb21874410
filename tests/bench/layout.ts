/**
 * What a layout costs: CPU of the core for one layout, request to answer, each time with another seed.
 * Medians are printed and nothing depends on them.
 */
import type { LayoutRequest } from '#core/contract.ts';
import { planLayout } from '#core/layout.ts';
import { resolveLayout } from '#core/wish/resolve-layout.ts';

const WARM_UP = 10;
const TURNS = 40;

const prints = (count: number) => Array.from({ length: count }, (_, at) => ({ id: `Print ${at}` }));

const lanes: readonly (readonly [name: string, request: LayoutRequest, aim: string])[] = [
  ['20 by 20, 6 prints', { columns: 20, rows: 20, prints: prints(6) }, ' (aim: at most 8)'],
  ['40 by 40, 6 prints', { columns: 40, rows: 40, prints: prints(6) }, ' (aim: at most 40)'],
  ['6 by 8, 4 prints', { columns: 6, rows: 8, prints: prints(4) }, ''],
  ['40 by 40, 26 prints', { columns: 40, rows: 40, prints: prints(26) }, ''],
  ['7 by 9, 4 prints, some must touch', { columns: 7, rows: 9, prints: prints(4) }, ''],
  [
    '20 by 20, 3 prints, corners',
    { columns: 20, rows: 20, prints: prints(3), touch: 'corners' },
    '',
  ],
  [
    '20 by 20, judged',
    { columns: 20, rows: 20, prints: prints(6), fixed: Array(20).fill('ABCDEFABCDEFABCDEFAB') },
    '',
  ],
];

for (const [name, request, aim] of lanes) {
  const costs: number[] = [];
  for (let turn = 0; turn < WARM_UP + TURNS; turn += 1) {
    const before = process.cpuUsage();
    const resolved = resolveLayout({ ...request, seed: turn });
    if (!resolved.ok) throw new Error(`${name} was refused.`);
    JSON.stringify(planLayout(resolved.value));
    const { user, system } = process.cpuUsage(before);
    if (turn >= WARM_UP) costs.push((user + system) / 1000);
  }
  costs.sort((one, other) => one - other);
  const median = costs[Math.floor(TURNS / 2)] ?? Number.NaN;
  const worst = costs.at(-1) ?? Number.NaN;
  console.log(
    `${name}: ${median.toFixed(2)} ms of CPU in the median${aim}, ${worst.toFixed(1)} at worst`,
  );
}
