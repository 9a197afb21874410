/**
 * Asks every address for many inputs drawn from the OpenAPI document, and prints what came of it:
 * `npm run fuzz`, or `COUNT=500 SEED=7 npm run fuzz`.
 */
import { readFileSync } from 'node:fs';
import { OPENAPI_FILE } from '../../api/docs/write-openapi.ts';
import type { OpenapiDocument } from '../support/ajv.ts';
import { FUZZED, judgeService } from './judge-service.ts';

const total = Number(process.env['COUNT'] ?? 10_000);
const seed = Number(process.env['SEED'] ?? 20_260_401);
const document = JSON.parse(readFileSync(OPENAPI_FILE, 'utf8')) as OpenapiDocument;
const count = Math.ceil(total / FUZZED.length);

console.log(`${count} requests to each of ${FUZZED.length} addresses, seed ${seed}`);
for (const path of FUZZED) {
  const start = performance.now();
  const { statuses, wrong } = await judgeService(document, path, { count, seed });
  const told = Object.entries(statuses).map(([status, times]) => `${status}: ${times}`);
  const seconds = ((performance.now() - start) / 1000).toFixed(1);
  console.log(`${path.padEnd(20)} ${told.join(', ')} (${seconds} s)`);
  for (const sentence of wrong.slice(0, 10)) console.error(`  ${sentence}`);
  if (wrong.length > 0) process.exitCode = 1;
}
