import { mkdtemp, rm } from 'node:fs/promises';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import type { TestProject } from 'vitest/node';
import { buildSite } from '../../client/build.ts';

/** Builds the site as the sources are now, once for all tests of a run; each worker serves a copy of its own. */
export async function setup(project: TestProject): Promise<() => Promise<void>> {
  const site = await mkdtemp(join(tmpdir(), 'ragbloom-site-'));
  await buildSite(site);
  project.provide('site', site);
  return () => rm(site, { recursive: true, force: true });
}
