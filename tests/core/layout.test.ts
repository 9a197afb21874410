import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import type { LayoutRequest } from '#core/contract.ts';
import { ENGINE } from '#core/engine.ts';
import { planLayout } from '#core/layout.ts';
import { resolveLayout } from '#core/wish/resolve-layout.ts';
import { countTouch, keepsPins } from '../support/boards.ts';
import { deepFreeze } from '../support/deep-freeze.ts';
import { layoutRequests } from '../support/layout-requests.ts';

function plan(request: LayoutRequest) {
  const resolved = resolveLayout(deepFreeze(request));
  if (!resolved.ok) throw new Error(JSON.stringify(resolved.faults));
  return planLayout(deepFreeze(resolved.value));
}

const prints = (count: number, values: readonly number[] = []) =>
  Array.from({ length: count }, (_, at) => ({
    id: `Print ${at + 1}`,
    ...(values[at] !== undefined && { value: values[at] }),
  }));

describe('planLayout', () => {
  test('planLayout of any request keeps counts and pins, and its figures agree with each other', () => {
    fc.assert(
      fc.property(layoutRequests, (request) => {
        const resolved = resolveLayout(request);
        fc.pre(resolved.ok);
        const { cells, input, touching, fewest, ...answer } = plan(request);
        expect(answer.spread.map(({ count }) => count)).toEqual(
          input.prints.map(({ count }) => count),
        );
        expect(keepsPins(cells, input.fixed)).toBe(true);
        const pairs = countTouch(cells, input.touch);
        expect(touching.sides + (input.touch === 'corners' ? touching.corners : 0)).toBe(pairs);
        expect(fewest).toBeLessThanOrEqual(pairs);
        expect(answer.optimal).toBe(fewest === pairs);
        const joined = answer.joinCount.reduce((sum, { observed }) => sum + observed, 0);
        expect(joined).toBe(pairs);
      }),
      { numRuns: 60 },
    );
  });

  test('planLayout of equal input gives equal bytes, of another seed another layout', () => {
    const request = { columns: 7, rows: 9, prints: prints(6) };
    expect(JSON.stringify(plan(request))).toBe(JSON.stringify(plan(request)));
    expect(plan({ ...request, seed: 2 }).cells).not.toEqual(plan(request).cells);
  });

  test('planLayout tells engine, links and seed', () => {
    const answer = plan({ columns: 4, rows: 4, prints: prints(4), seed: 9 });
    expect(answer.engine).toBe(ENGINE);
    expect(answer.seed).toBe(9);
    expect(answer.links.self).toMatch(
      /^\/v1\/layout\?columns=4&rows=4&prints\.0\.id=Print%201.*&seed=9$/,
    );
    expect(answer.links.image).toMatch(/^\/v1\/layout\.svg\?/);
    expect(answer.links).not.toHaveProperty('page');
  });

  test('planLayout of a full grid judges it as it stands', () => {
    const fixed = ['AABB', 'AABB', 'AABB', 'AABB'];
    const answer = plan({ columns: 4, rows: 4, prints: prints(2, [0, 1]), touch: 'sides', fixed });
    expect(answer.cells).toEqual(fixed);
    // The halves of the join-count example: 20 joins alike, where a chessboard of the same has none.
    expect(answer.touching.sides).toBe(20);
    expect([answer.fewest, answer.optimal]).toEqual([0, false]);
    expect(answer.value?.moran).toBeCloseTo(0.6667, 4);
  });

  test.each(['checkerboard', 'diagonal', 'rings'] as const)(
    'planLayout(%s) says how few could touch',
    (pattern) => {
      const answer = plan({ columns: 8, rows: 8, prints: prints(4), pattern });
      expect(answer.fewest).toBe(0);
      expect(answer.input.pattern).toBe(pattern);
    },
  );

  test('planLayout tells of values only where every print laid has one, and not all the same', () => {
    expect(plan({ columns: 4, rows: 4, prints: prints(4) }).value).toBeUndefined();
    expect(plan({ columns: 4, rows: 4, prints: prints(4, [1, 2, 3]) }).value).toBeUndefined();
    expect(plan({ columns: 4, rows: 4, prints: prints(4, [5, 5, 5, 5]) }).value).toBeUndefined();
    expect(plan({ columns: 4, rows: 4, prints: prints(4, [5, 6, 7, 8]) }).value).toBeDefined();
  });
});
