import { readFileSync } from 'node:fs';
import { join } from 'node:path';
import { parse } from 'smol-toml';
import { describe, expect, test } from 'vitest';
import { ENDPOINTS } from '../../api/app.ts';
import { EXTREMES } from '../bench/extremes.ts';
import { root } from '../structure/source-tree.ts';

const settings = parse(readFileSync(join(root, 'wrangler.toml'), 'utf8')) as unknown as {
  readonly limits: { readonly cpu_ms: number };
};

/** The most that a machine shared with other work may be slower than the platform's. */
const SLOWER = 2;

describe.each(ENDPOINTS)('$path', ({ path, understand }) => {
  const extremes = EXTREMES[path.replace('.svg', '')] ?? [];

  test('takes extremes, each of which the platform lets end', () => {
    const costs = extremes.flatMap((input) => {
      const before = process.cpuUsage();
      const understood = understand(input);
      if (!understood.ok) return [];
      understood.value.write();
      const { user, system } = process.cpuUsage(before);
      return [(user + system) / 1000];
    });
    expect(costs.length).toBeGreaterThan(0);
    expect(Math.max(...costs)).toBeLessThan(SLOWER * settings.limits.cpu_ms);
  });
});
