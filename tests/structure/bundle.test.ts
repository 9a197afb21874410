import { mkdtemp, rm } from 'node:fs/promises';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { afterAll, beforeAll, describe, expect, test } from 'vitest';
import { ELEMENTS } from '../../client/build/budgets.ts';
import { listLoaded } from '../../client/build/bundle-elements.ts';
import { buildSite, type Site } from '../../client/build.ts';
import { findForbidden, findLeftovers } from './bundle-rules.ts';
import { listFiles, readText } from './source-tree.ts';

const LIT = 'node_modules/lit-html/lit-html.js';

describe('the scripts that a page loads', () => {
  let out = '';
  let site: Site;
  beforeAll(async () => {
    out = await mkdtemp(join(tmpdir(), 'ragbloom-bundle-'));
    site = await buildSite(out);
  }, 60_000);
  afterAll(() => rm(out, { recursive: true, force: true }));

  test.each(Object.keys(ELEMENTS))(
    'there is one for %s, which holds it, and lit is in the base',
    (name) => {
      const start = site.scripts.find(({ entry }) => entry === `client/embed/register-${name}.ts`);
      const loaded = start === undefined ? [] : listLoaded(start, site.scripts);
      const inputs = site.scripts
        .filter((script) => loaded.includes(script.name))
        .flatMap((script) => script.inputs);
      expect(inputs).toContain(`client/elements/${name}/${name}-element.ts`);
      expect(inputs.filter((input) => input === LIT)).toHaveLength(1);
    },
  );

  test('lit is in one of them alone', () => {
    const held = site.scripts.filter(({ inputs }) => inputs.includes(LIT));
    expect(held.map(({ name }) => name.split('-')[0])).toEqual(['base']);
  });

  test('what they take of one another, the other gives out', () => {
    const texts = new Map(
      site.scripts.map(({ name, contents }) => [name, new TextDecoder().decode(contents)]),
    );
    const split = (list = '') => list.split(',').map((one) => one.trim());
    const given = (name: string) =>
      [...(texts.get(name) ?? '').matchAll(/export\{([^}]*)\}/g)].flatMap(([, list]) =>
        split(list).map((one) => one.split(' as ').at(-1)),
      );
    const taken = [...texts.values()].flatMap((text) =>
      [...text.matchAll(/import\{([^}]*)\}from"\.\/([\w-]+\.js)"/g)].flatMap(
        ([, list, from = '']) =>
          split(list).map((one) => ({ from, name: one.split(' as ')[0] ?? '' })),
      ),
    );
    expect(taken.length).toBeGreaterThan(50);
    expect(taken.filter(({ from, name }) => !given(from).includes(name))).toEqual([]);
  });

  test('none holds zod, hono, or a room of the service beside the core', () => {
    expect(site.scripts.flatMap(({ inputs }) => findForbidden(inputs))).toEqual([]);
  });

  test('none holds code for making instead of for use', () => {
    const texts = site.scripts.map(({ contents }) => new TextDecoder().decode(contents));
    expect(texts.flatMap(findLeftovers)).toEqual([]);
  });
});

describe('the elements', () => {
  const folders = listFiles('client/elements/*/*-element.ts').map(
    (file) => file.split('/')[2] ?? '',
  );

  test('each has a budget in client/build/budgets.ts, and each budget an element', () => {
    expect(Object.keys(ELEMENTS).toSorted()).toEqual(folders.toSorted());
  });

  test.each(folders)('%s is registered under its name by client/embed/register-….ts', (name) => {
    const text = readText(`client/embed/register-${name}.ts`);
    expect(text).toContain(`'../elements/${name}/${name}-element.ts'`);
    expect(text).toContain(`registerElement('${name}', `);
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

  test.each(['api/core/plan.ts', 'client/embed/loader.ts', 'node_modules/valibot/dist/index.mjs'])(
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
