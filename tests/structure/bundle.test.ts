import { mkdtemp, readFile, rm } from 'node:fs/promises';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { afterAll, beforeAll, describe, expect, test } from 'vitest';
import { type Bundle, budget, buildSite, findExcess } from '../../client/build.ts';
import { findForbidden, findLeftovers } from './bundle-rules.ts';

describe('the bundles that a page loads', () => {
  let out = '';
  let bundles: readonly Bundle[] = [];
  beforeAll(async () => {
    out = await mkdtemp(join(tmpdir(), 'ragbloom-bundle-'));
    bundles = (await buildSite(out)).filter(({ name }) => name !== 'worker.js');
  }, 60_000);
  afterAll(() => rm(out, { recursive: true, force: true }));

  test('there is one for the element, and it holds the element, lit and the core', () => {
    const inputs = Object.keys(bundles.find(({ name }) => name === 'embed.js')?.meta.inputs ?? {});
    expect(inputs).toContain('client/embed.ts');
    expect(inputs).toContain('client/elements/plan/plan-element.ts');
    expect(inputs.some((input) => input.startsWith('node_modules/lit-html/'))).toBe(true);
    expect(inputs.some((input) => input.startsWith('api/core/'))).toBe(true);
  });

  test('none holds zod, hono, or a room of the service beside the core', () => {
    const found = bundles.map(({ meta }) => findForbidden(Object.keys(meta.inputs)));
    expect(found).toEqual(bundles.map(() => []));
  });

  test('each has a budget and keeps to it', () => {
    for (const { name } of bundles) expect(budget).toHaveProperty([name]);
    expect(findExcess(bundles)).toEqual([]);
  });

  test('the element with all that it needs at once is at most 25 kB after gzip', () => {
    const element = bundles.find(({ name }) => name === 'embed.js');
    expect(element?.gzip).toBeGreaterThan(0);
    expect(element?.gzip).toBeLessThanOrEqual(25_000);
  });

  test('none holds code for making instead of for use', async () => {
    const scripts = bundles.map(({ name }) => readFile(join(out, 'assets', name), 'utf8'));
    expect((await Promise.all(scripts)).flatMap(findLeftovers)).toEqual([]);
  });
});

describe('findForbidden', () => {
  test.each([
    'node_modules/zod/v4/core/core.js',
    'node_modules/hono/dist/hono.js',
    'node_modules/@hono/zod-validator/dist/index.js',
    'api/http/answer.ts',
    'api/endpoints/plan.ts',
    'api/pages/plan-picture.ts',
    'api/app.ts',
    'tests/support/worker.ts',
  ])('findForbidden([%j]) refuses', (input) => {
    expect(findForbidden([input])).toEqual([input]);
  });

  test.each(['api/core/plan.ts', 'client/embed.ts', 'node_modules/valibot/dist/index.mjs'])(
    'findForbidden([%j]) lets pass',
    (input) => {
      expect(findForbidden([input])).toEqual([]);
    },
  );
});

describe('findLeftovers', () => {
  test('findLeftovers finds the words of a build for making', () => {
    expect(findLeftovers('console.warn("Lit is in dev mode.")')).toEqual(['Lit is in dev mode']);
  });
});
