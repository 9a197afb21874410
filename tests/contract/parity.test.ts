import { fileURLToPath } from 'node:url';
import { build } from 'esbuild';
import fc from 'fast-check';
import type { Page } from 'playwright-core';
import { afterAll, beforeAll, describe, expect, inject, test } from 'vitest';
import { reckon } from '../golden/reckon.ts';
import type { GoldenPath } from '../golden/vectors.ts';
import { launchBrowser } from '../support/browser.ts';
import { planRequests, washRequests, yardageRequests } from '../support/requests.ts';
import { useWorker } from '../support/worker.ts';
import {
  kitsRequests,
  layoutRequests,
  mixedYardageRequests,
  stashRequests,
} from '../support/workroom-requests.ts';

/** How many inputs each address is asked: a thousand together. */
const DRAWN: readonly (readonly [GoldenPath, number, fc.Arbitrary<object>])[] = [
  ['/v1/plan', 300, planRequests],
  ['/v1/yardage', 250, fc.oneof(yardageRequests, mixedYardageRequests)],
  ['/v1/wash-shrinkage', 150, washRequests],
  ['/v1/layout', 100, layoutRequests],
  ['/v1/stash', 100, stashRequests],
  ['/v1/kits', 100, kitsRequests],
];

const worker = useWorker();

/** A page that holds the core and has no network. */
const offline: { page?: Page; close?: () => Promise<void> } = {};

beforeAll(async () => {
  const entry = fileURLToPath(new URL('../golden/reckon.ts', import.meta.url));
  const { outputFiles } = await build({
    entryPoints: [entry],
    bundle: true,
    minify: true,
    write: false,
    format: 'iife',
    globalName: 'core',
    target: 'es2022',
  });
  const browser = await launchBrowser();
  const context = await browser.newContext();
  const page = await context.newPage();
  await context.setOffline(true);
  await page.addScriptTag({ content: outputFiles[0]?.text ?? '' });
  Object.assign(offline, { page, close: () => browser.close() });
}, 60_000);
afterAll(() => offline.close?.());

/** The same inputs reckoned in the page, in one visit. */
async function reckonInPage(
  path: GoldenPath,
  inputs: readonly object[],
): Promise<readonly string[]> {
  const given = { path, inputs: JSON.stringify(inputs) };
  const answers = await offline.page?.evaluate(({ path: at, inputs: text }) => {
    const { core } = globalThis as unknown as { core: { reckon: typeof reckon } };
    return (JSON.parse(text) as object[]).map((input) => core.reckon(at, input));
  }, given);
  if (answers === undefined) throw new Error('The page runs only inside a test.');
  return answers;
}

/** What the worker says: the bytes of an answer, or of a problem the codes and places of its faults. */
async function askWorker(path: GoldenPath, input: object): Promise<string> {
  const answer = await worker.fetch(path, {
    method: 'POST',
    headers: { 'Content-Type': 'application/json' },
    body: JSON.stringify(input),
  });
  const text = await answer.text();
  if (answer.status === 200) return text;
  const { errors } = JSON.parse(text) as { errors: readonly { code: string; pointer: string }[] };
  return errors.map(({ code, pointer }) => `${code} ${pointer}`).join('\n');
}

/** Faults of the core as the worker tells them; an answer as it is. */
function tellAlike(reckoned: string): string {
  const value: unknown = JSON.parse(reckoned);
  if (!Array.isArray(value)) return reckoned;
  return (value as { code: string; path: readonly (string | number)[] }[])
    .map(({ code, path }) => `${code} ${path.map((key) => `/${key}`).join('')}`)
    .join('\n');
}

/** Where two answers part, with what stands there; nothing where they do not. */
function findGap(
  who: string,
  [one = '', other = '']: readonly [string | undefined, string | undefined],
  input: object,
): readonly string[] {
  if (one === other) return [];
  const at = [...one].findIndex((letter, place) => letter !== other[place]);
  const [said, instead] = [one, other].map((text) => text.slice(Math.max(0, at - 40), at + 40));
  return [`${who}: ${said} where here it is ${instead}, of ${JSON.stringify(input)}`];
}

describe('one input gives the same bytes wherever it is reckoned', () => {
  test('a thousand inputs are drawn', () => {
    expect(DRAWN.reduce((sum, [, count]) => sum + count, 0)).toBe(1000);
  });

  test.each(DRAWN)(
    '%s: %d inputs by the worker, here, and in a page without a network',
    async (path, count, requests) => {
      const drawn = fc.sample(requests, { seed: inject('seed'), numRuns: count });
      const inputs = drawn.map((input) => JSON.parse(JSON.stringify(input)) as object);
      const here = inputs.map((input) => reckon(path, input));
      const inPage = await reckonInPage(path, inputs);
      const answered = here.filter((answer) => !answer.startsWith('['));
      expect(answered.length).toBeGreaterThan(count / 2);
      const byWorker: string[] = [];
      for (const input of inputs) byWorker.push(await askWorker(path, input));
      const gaps = inputs.flatMap((input, at) => [
        ...findGap('page', [inPage[at], here[at]], input),
        ...findGap('worker', [byWorker[at], tellAlike(here[at] ?? '')], input),
      ]);
      expect(gaps).toEqual([]);
    },
    60_000,
  );
});
