import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { writeWork } from '#core/plan/write-work.ts';
import { resolvePlan } from '#core/wish/resolve-plan.ts';
import { explainedFor } from '../../support/plans.ts';
import { planRequests } from '../../support/requests.ts';

function workFor(request: Parameters<typeof explainedFor>[0]) {
  const { plan, input } = explainedFor(request);
  return { plan, work: writeWork(plan, input.unit) };
}

describe('writeWork', () => {
  test('writeWork stacks the blocks of each print by its letter and name', () => {
    const prints = [
      { id: 'Heron dot', count: 5 },
      { id: 'Rust check', count: 0 },
      { id: 'Oat sprig', count: 1 },
    ];
    const layers = [{ role: 'top', prints }, { role: 'backing' }] as const;
    const { work } = workFor({ target: { columns: 2, rows: 3 }, layers });
    expect(work.stacks).toEqual([
      { letter: 'A', print: 'Heron dot', blocks: 5 },
      { letter: 'C', print: 'Oat sprig', blocks: 1 },
    ]);
  });

  test('writeWork of a top of one cloth has one stack without a name', () => {
    const layers = [{ role: 'top', prints: 1 }, { role: 'backing' }] as const;
    const { work } = workFor({ target: { columns: 3, rows: 3 }, layers });
    expect(work.stacks).toEqual([{ letter: 'A', blocks: 9 }]);
    expect(work.topLeft).toEqual({ block: 'A1', letter: 'A' });
  });

  test('writeWork conserves: seams in chains, blocks in stacks, bobbins, thread and the arrangement', () => {
    fc.assert(
      fc.property(planRequests, (request) => {
        fc.pre(resolvePlan(request).ok);
        const { plan, work } = workFor(request);
        const { columns, rows } = plan.grid;
        const seams = Object.fromEntries(
          work.chains.map((run) => [run.step, run.chains * run.seams]),
        );
        expect(seams['quilt-first']).toBe(plan.blocks);
        expect(seams['quilt-second']).toBe(plan.blocks);
        expect(seams['join'] ?? 0).toBe(rows * (columns - 1));
        expect(seams['join-rows'] ?? 0).toBe(rows - 1);
        expect(work.stacks.reduce((sum, { blocks }) => sum + blocks, 0)).toBe(plan.blocks);
        const changes = work.bobbins.reduce((sum, one) => sum + one.changes, 0);
        expect(changes).toBe(plan.thread.bobbins - 1);
        expect(work.rows.map(({ blocks }) => blocks)).toEqual(plan.cells);
        for (const { letter, blocks } of work.stacks) {
          expect(plan.cells.join('').split(letter).length - 1).toBe(blocks);
        }
        expect(work.rows[0]?.blocks[0]).toBe(work.topLeft.letter);
      }),
      { numRuns: 60 },
    );
  });
});
