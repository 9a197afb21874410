import { existsSync } from 'node:fs';
import { join } from 'node:path';
import { describe, expect, test } from 'vitest';
import { findCircle, judgeImports, resolve } from './import-rules.ts';
import { parseModule } from './parse-module.ts';
import { listFiles, readText, root } from './source-tree.ts';

const files = new Map(
  listFiles('api/**/*.ts', 'client/**/*.ts').map((file) => [file, readText(file)]),
);

describe('the directions of the house', () => {
  test('every file of api/ and client/ imports only what its room may', () => {
    expect([...files].flatMap(([file, text]) => judgeImports(file, text))).toEqual([]);
  });

  test('every import names a file that is there', () => {
    const missing = [...files].flatMap(([file, text]) =>
      parseModule(text)
        .imports.filter(({ specifier }) => /^[.#]/.test(specifier))
        .map(({ specifier }) => resolve(file, specifier))
        .filter((target) => !existsSync(join(root, target)))
        .map((target) => `${file} imports ${target}`),
    );
    expect(missing).toEqual([]);
  });

  test('no imports run in a circle', () => {
    expect(findCircle(files)).toBeUndefined();
  });

  test('there is something to judge in every room', () => {
    const rooms = ['api/core/', 'api/http/', 'api/endpoints/', 'api/pages/', 'client/elements/'];
    for (const room of rooms) {
      expect([...files.keys()].filter((file) => file.startsWith(room)).length).toBeGreaterThan(0);
    }
  });
});

/** Each a file and an import that the rules must refuse. */
const REFUSED: readonly (readonly [file: string, text: string])[] = [
  ['api/core/plan.ts', "import { readFileSync } from 'node:fs';"],
  ['api/core/plan.ts', "import { z } from 'zod';"],
  ['api/core/plan.ts', "import type { Hono } from 'hono';"],
  ['api/core/plan.ts', "import { answer } from '../http/answer.ts';"],
  ['api/core/plan.ts', "import { roundTo } from '#core/length.ts';"],
  ['api/core/plan.ts', "import { roundTo } from './length';"],
  ['api/core/plan.ts', "import { roundTo } from './length.js';"],
  ['api/core/plan.ts', "export { roundTo } from './length.ts';"],
  ['api/core/plan.ts', "export * from './length.ts';"],
  ['api/core/plan.ts', "const a = await import('node:fs');"],
  ['api/core/plan.ts', "const a = await import('./' + name);"],
  ['api/core/plan.ts', "export type A = import('zod').ZodType;"],
  ['api/core/index.ts', ''],
  ['api/http/answer.ts', "import { plan } from '../endpoints/plan.ts';"],
  ['api/http/answer.ts', "import { zValidator } from '@hono/zod-validator';"],
  ['api/http/answer.ts', "import { roundTo } from '../core/length.ts';"],
  ['api/http/answer.ts', "import { html } from 'lit';"],
  ['api/endpoints/plan.ts', "import { yardage } from './yardage.ts';"],
  ['api/endpoints/plan.ts', "import { zValidator } from '@hono/zod-validator';"],
  ['api/pages/problem-page.ts', "import { plan } from '../endpoints/plan.ts';"],
  ['api/app.ts', "import { en } from '../client/text/plan/en.ts';"],
  ['api/app.ts', "import { useWorker } from '../tests/support/worker.ts';"],
  ['client/text/plan/en.ts', "import { FAULT_CODES } from '#core/faults.ts';"],
  ['client/data/load-plan.ts', "import { z } from 'zod';"],
  ['client/data/load-plan.ts', "import { html } from 'lit';"],
  ['client/data/load-plan.ts', "import type { Endpoint } from '../../api/http/endpoint.ts';"],
  ['client/elements/plan/plan-view.ts', "import { view } from '../counter/counter-view.ts';"],
  ['client/elements/plan/plan-view.ts', "import { object } from 'valibot';"],
  ['client/elements/plan/plan-view.ts', "import { Hono } from 'hono';"],
  ['client/fields/chips.ts', "import { view } from '../elements/plan/plan-view.ts';"],
  ['client/elements/plan/plan-view.ts', "import { planQuilt } from '../../../api/core/plan.ts';"],
  ['client/stray.ts', ''],
];

describe('judgeImports', () => {
  test.each(REFUSED)('judgeImports(%j, %j) refuses', (file, text) => {
    expect(judgeImports(file, text)).not.toEqual([]);
  });

  test('judgeImports lets types of core into client/text', () => {
    const text = "import type { FaultCode } from '#core/faults.ts';";
    expect(judgeImports('client/text/plan/en.ts', text)).toEqual([]);
  });

  test('judgeImports lets the one wrapper have the validator', () => {
    const text = "import { zValidator } from '@hono/zod-validator';";
    expect(judgeImports('api/http/validate.ts', text)).toEqual([]);
  });
});

describe('findCircle', () => {
  const a = ['client/data/a.ts', "import { b } from './b.ts'; export const a = 1;"] as const;

  test('findCircle names a circle of two', () => {
    const b = ['client/data/b.ts', "import { a } from './a.ts'; export const b = 1;"] as const;
    expect(findCircle(new Map([a, b]))).toEqual([a[0], b[0], a[0]]);
  });

  test('findCircle passes over imports of types', () => {
    const b = ['client/data/b.ts', "import type { A } from './a.ts'; export const b = 1;"] as const;
    expect(findCircle(new Map([a, b]))).toBeUndefined();
  });
});
