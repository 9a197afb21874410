/**
 * The dearest input that each endpoint takes, as a search finds it. What was found is printed, with the
 * least CPU of nine runs on this machine and with the same as a multiple of the yardstick that
 * `tests/contract/worst-input.test.ts` measures by; nothing depends on it. The platform's free limit is 10 ms.
 */
import { ENDPOINTS } from '../../api/app.ts';
import { findWorst } from './find-worst.ts';
import { timeYardstick } from './time-yardstick.ts';

const SEED = Number(process.env['SEED'] ?? 20_260_401);
const TRIES = Number(process.env['TRIES'] ?? 150);
const FREE_LIMIT = 10;

const hunt = { seed: SEED, tries: TRIES, likely: 20, runs: 3, enough: 100 * FREE_LIMIT };

for (const endpoint of ENDPOINTS) {
  const before = timeYardstick();
  const worst = findWorst(endpoint, hunt);
  const sticks = worst.cost / Math.min(before, timeYardstick());
  const judged = worst.cost > FREE_LIMIT ? `over ${FREE_LIMIT} ms` : '';
  console.log(
    `${endpoint.path.padEnd(20)} ${worst.cost.toFixed(2).padStart(8)} ms of CPU, ${sticks.toFixed(2)} sticks ${judged}`,
  );
  console.log(`  ${JSON.stringify(worst.input).slice(0, 240)}`);
}
