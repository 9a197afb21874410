import { execFile } from 'node:child_process';
import { mkdtemp, readFile, rm, writeFile } from 'node:fs/promises';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { promisify } from 'node:util';
import { parse } from 'smol-toml';
import { describe, expect, test } from 'vitest';
import { buildSite } from '../../client/build.ts';
import { root } from '../structure/source-tree.ts';

const text = await readFile(join(root, 'wrangler.toml'), 'utf8');
const settings = parse(text) as unknown as {
  readonly main: string;
  readonly assets: { readonly directory: string };
  readonly limits: { readonly cpu_ms: number };
  readonly cache: { readonly enabled: boolean };
};

describe('wrangler.toml', () => {
  test('is taken by the tool that deploys, which finds worker, pages and bindings', async () => {
    const home = await mkdtemp(join(tmpdir(), 'ragbloom-'));
    try {
      await buildSite(home);
      // The same settings over a build of its own, so that no other build is disturbed.
      const own = text
        .replace(/^\[build\]\n.*\n/m, '')
        .replace(settings.main, join(home, 'worker/worker.js'))
        .replace(settings.assets.directory, join(home, 'assets'));
      await writeFile(join(home, 'wrangler.toml'), own);
      const command = ['deploy', '--dry-run', '--outdir', join(home, 'out')];
      const { stdout, stderr } = await promisify(execFile)(
        join(root, 'node_modules/.bin/wrangler'),
        [...command, '--config', join(home, 'wrangler.toml')],
        { cwd: home, env: { ...process.env, ...QUIET, XDG_CONFIG_HOME: home } },
      );
      expect(stdout).toContain('--dry-run: exiting now.');
      expect(stdout).toContain('env.RATE_LIMIT');
      expect(stdout).toContain('env.ASSETS');
      expect(`${stdout}${stderr}`).not.toMatch(/unexpected fields|\bWARNING\b|\bERROR\b/);
    } finally {
      await rm(home, { recursive: true, force: true });
    }
  }, 60_000);

  test('lets the edge answer again what it holds, and stops what runs away', () => {
    expect(settings.cache.enabled).toBe(true);
    expect(settings.limits.cpu_ms).toBeLessThanOrEqual(1000);
  });
});

/** No question asked, nothing sent anywhere. */
const QUIET = {
  CI: '1',
  NO_COLOR: '1',
  WRANGLER_SEND_METRICS: 'false',
  WRANGLER_HIDE_BANNER: 'true',
};
