import { readFileSync } from 'node:fs';
import { join } from 'node:path';
import { parse } from 'smol-toml';
import { describe, expect, test } from 'vitest';
import { ENDPOINTS } from '../../api/app.ts';
import { findWorst } from '../bench/find-worst.ts';
import { timeYardstick } from '../bench/time-yardstick.ts';
import { root } from '../structure/source-tree.ts';

const settings = parse(readFileSync(join(root, 'wrangler.toml'), 'utf8')) as unknown as {
  readonly limits: { readonly cpu_ms: number };
};

/** CPU of the yardstick, ms, on a machine half as slow again as the one that the limit was set on. */
const STICK = 12;

const hunt = { seed: 20_260_401, tries: 8, likely: 5, runs: 2 };

describe.each(ENDPOINTS)('$path', (endpoint) => {
  test('has no input, as far as a search finds, that the platform would not let end', () => {
    const before = timeYardstick();
    const { cost } = findWorst(endpoint, { ...hunt, enough: 20 * settings.limits.cpu_ms });
    const stick = Math.max(before, timeYardstick());
    expect(cost).toBeGreaterThan(0);
    expect((cost / stick) * STICK).toBeLessThan(settings.limits.cpu_ms);
  }, 60_000);
});
