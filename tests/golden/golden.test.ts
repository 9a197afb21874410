import { describe, expect, test } from 'vitest';
import type { PlanAnswer } from '#core/contract.ts';
import { ENGINE } from '#core/engine.ts';
import { app } from '../../api/app.ts';
import { useWorker } from '../support/worker.ts';
import { reckon } from './reckon.ts';
import {
  GOLDEN_FILES,
  type GoldenName,
  type GoldenPath,
  type Vectors,
  writeVectors,
} from './vectors.ts';
import { findBreach, readVectors } from './write-golden.ts';

const names = Object.keys(GOLDEN_FILES) as GoldenName[];
const files = await Promise.all(
  names.map(async (name): Promise<Vectors> => {
    const found = await readVectors(name);
    return found ?? { engine: '', path: GOLDEN_FILES[name], vectors: [] };
  }),
);
const worker = useWorker();
const headers = { 'Content-Type': 'application/json' };

test('there are at least 200 golden pairs, of the engine that is here', () => {
  expect(files.map(({ engine }) => engine)).toEqual(names.map(() => ENGINE));
  expect(files.reduce((sum, { vectors }) => sum + vectors.length, 0)).toBeGreaterThanOrEqual(200);
});

test('plans among them tell how each figure came about', () => {
  const answers = files.flatMap(({ path, vectors }) =>
    path === '/v1/plan' ? vectors.map(({ answer }) => answer as PlanAnswer) : [],
  );
  expect(answers.filter(({ why }) => (why?.length ?? 0) > 10).length).toBeGreaterThan(30);
});

describe.each(files)('golden pairs of $path', ({ path, vectors }) => {
  // Answers are long: what differs is told by its place in the file, and `npm run golden` shows how.
  test('are reckoned to the byte on Node', () => {
    const wrong = vectors.filter(
      ({ input, answer }) => reckon(path as GoldenPath, input) !== JSON.stringify(answer),
    );
    expect(wrong.map((vector) => vectors.indexOf(vector))).toEqual([]);
  });

  test('are answered to the byte by the worker runtime', async () => {
    const wrong: number[] = [];
    for (const [at, { input, answer }] of vectors.entries()) {
      const told = await worker.fetch(path, {
        method: 'POST',
        headers,
        body: JSON.stringify(input),
      });
      if ((await told.text()) !== JSON.stringify(answer)) wrong.push(at);
    }
    expect(wrong).toEqual([]);
  });

  test('are answered alike through the service on Node', async () => {
    const [first] = vectors;
    const body = JSON.stringify(first?.input);
    const told = await app.request(path, { method: 'POST', headers, body });
    expect((await told.text()) === JSON.stringify(first?.answer)).toBe(true);
  });
});

describe('findBreach', () => {
  const before: Vectors = {
    engine: '1.0.0',
    path: '/v1/plan',
    vectors: [{ input: { a: 1 }, answer: { b: 1 } }],
  };
  const after: Vectors = { ...before, vectors: [{ input: { a: 1 }, answer: { b: 2 } }] };
  test('refuses another answer, or none, of an engine that was released', () => {
    expect(findBreach(before, after, ['1.0.0'])).toMatch(/^1 answers .* raise ENGINE/);
    expect(findBreach(before, { ...after, vectors: [] }, ['1.0.0'])).toContain('raise ENGINE');
  });
  test('lets pass what is the same, what is new, and any change of an engine not released', () => {
    const more = { ...before, vectors: [...before.vectors, { input: { a: 2 }, answer: {} }] };
    expect(findBreach(before, more, ['1.0.0'])).toBeUndefined();
    expect(findBreach(before, after, [])).toBeUndefined();
    expect(findBreach(before, { ...after, engine: '1.1.0' }, ['1.0.0'])).toBeUndefined();
    expect(findBreach(undefined, after, ['1.0.0'])).toBeUndefined();
  });
});

test('writeVectors puts a pair on each line and can be read again', () => {
  const [file] = files;
  if (file === undefined) throw new Error('There is no file.');
  const text = writeVectors(file);
  expect(text.split('\n')).toHaveLength(file.vectors.length + 3);
  expect(writeVectors(JSON.parse(text) as Vectors) === text).toBe(true);
});
