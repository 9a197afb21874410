import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import type { PlanAnswer, PlanRequest } from '#core/contract.ts';
import { ENGINE } from '#core/engine.ts';
import { planQuilt } from '#core/plan.ts';
import { resolvePlan } from '#core/wish/resolve-plan.ts';
import { TEXT_KEYS } from '../../api/http/schemas/wire-schemas.ts';
import { unfoldQuery } from '../../api/http/unfold-query.ts';
import { judgeDerivations } from '../support/judge-derivations.ts';
import { planFor, understandPlan } from '../support/plans.ts';
import { planRequests } from '../support/requests.ts';

const target = { width: 40, height: 50 };

/** Runs a law over the answers to any wish that has no fault. */
function holdForAnswers(law: (answer: PlanAnswer, request: PlanRequest) => void, numRuns = 40) {
  fc.assert(
    fc.property(planRequests, (request) => {
      fc.pre(resolvePlan(request).ok);
      law(planFor(request), request);
    }),
    { numRuns },
  );
}

/** What a plan is, without how it was wished for. */
const quiltOf = ({
  grid,
  block,
  size,
  fabrics,
  thread,
  fringe,
  bulk,
  weight,
  time,
  layout,
}: PlanAnswer) => ({
  grid,
  block,
  size,
  fabrics,
  thread,
  fringe,
  bulk,
  weight,
  time,
  layout,
});

/** The same request with every length in centimetres, nothing left to defaults that differ by unit. */
function inBothUnits(
  columns: number,
  rows: number,
  cut: number,
): readonly [PlanRequest, PlanRequest] {
  const request = (unit: 'in' | 'cm'): PlanRequest => ({
    unit,
    target: { columns, rows },
    block: { cut: `${cut} in`, seam: '1 in', snipDepth: '1/2 in', snipPitch: '1/4 in' },
    layers: (['top', 'backing'] as const).map((role) => ({
      role,
      width: '42 in',
      selvage: '1/2 in',
    })),
    stitch: { length: '0.1 in', tail: '3 in', link: '1/2 in', bobbin: '60 yd' },
    tolerance: { seam: '1/16 in', cut: '1/16 in', ease: '1/2 in' },
  });
  return [request('in'), request('cm')];
}

describe('planQuilt', () => {
  test('planQuilt carries engine, input, assumptions, cautions and links', () => {
    const understood = understandPlan({ target });
    const answer = planQuilt(understood);
    expect(answer.engine).toBe(ENGINE);
    expect(answer.input).toEqual(understood.input);
    expect(answer.links).toEqual({
      self: '/v1/plan?target.width=40&target.height=50',
      page: '/?target.width=40&target.height=50',
      image: '/v1/plan.svg?target.width=40&target.height=50',
    });
    expect(answer.cautions.length).toBeGreaterThan(0);
    expect(answer).not.toHaveProperty('why');
  });

  test('planQuilt tells the cut that it chose as an assumption, and none that was given', () => {
    const chosen = planFor({ target });
    const told = chosen.assumptions.filter(({ path }) => path === 'block.cut');
    expect(told).toMatchObject([{ value: chosen.block.cut }]);
    const given = planFor({ target, block: { cut: 9 } });
    expect(given.assumptions.some(({ path }) => path === 'block.cut')).toBe(false);
  });

  test('planQuilt gives the same bytes for the same input, twice over and from its own query', () => {
    fc.assert(
      fc.property(planRequests, (request) => {
        const read = resolvePlan(request);
        fc.pre(read.ok);
        const bytes = JSON.stringify(planQuilt(read.value));
        expect(JSON.stringify(planFor(structuredClone(request)))).toBe(bytes);
        expect(JSON.stringify(planFor(read.value.input))).toBe(bytes);
        const unfolded = unfoldQuery(read.value.query, TEXT_KEYS);
        if (!unfolded.ok) throw new Error(read.value.query);
        expect(JSON.stringify(planFor(unfolded.value as PlanRequest))).toBe(bytes);
      }),
      { numRuns: 25 },
    );
  });

  test('planQuilt given back its own grid and cut is the same quilt', () => {
    holdForAnswers((answer, request) => {
      const cut = answer.input.block.cut ?? answer.block.cut;
      // Only a cut that the answer can say in four decimals can be given back.
      if (Math.abs(cut - answer.block.cut) > 1e-9) return;
      const { columns, rows } = answer.grid;
      const again = planFor({
        ...request,
        target: { columns, rows },
        block: { ...request.block, cut },
      });
      expect(quiltOf(again)).toEqual(quiltOf(answer));
    });
  });

  test('planQuilt in inches and in centimetres of one input is the same quilt', () => {
    const counts = fc.integer({ min: 1, max: 14 });
    const cuts = fc.integer({ min: 24, max: 48 }).map((quarters) => quarters / 4);
    fc.assert(
      fc.property(counts, counts, cuts, (columns, rows, cut) => {
        const [inches, metric] = inBothUnits(columns, rows, cut).map(planFor);
        if (inches === undefined || metric === undefined) throw new Error('no plan');
        for (const side of ['width', 'height'] as const) {
          expect(metric.size.sewn[side] / 2.54).toBeCloseTo(inches.size.sewn[side], 3);
          expect(metric.size.washed[side] / 2.54).toBeCloseTo(inches.size.washed[side], 3);
        }
        expect(metric.size.change).toEqual(inches.size.change);
        expect(metric.fringe).toEqual(inches.fringe);
        expect(metric.bulk).toEqual(inches.bulk);
        expect(metric.layout).toEqual(inches.layout);
        expect(metric.thread.used / 0.9144).toBeCloseTo(inches.thread.used, 3);
        expect(metric.thread.bobbins).toBe(inches.thread.bobbins);
        expect(metric.weight.dry / 0.45359237).toBeCloseTo(inches.weight.dry, 3);
        expect(metric.mismatch.within).toBeCloseTo(inches.mismatch.within, 3);
        const strips = ({ fabrics }: PlanAnswer) => fabrics.map((row) => [row.pieces, row.strips]);
        expect(strips(metric)).toEqual(strips(inches));
        const { total, ...stages } = metric.time;
        expect(total).toBeCloseTo(inches.time.total, 3);
        expect(Object.values(stages).reduce((sum, one) => sum + one, 0)).toBeCloseTo(total, 3);
      }),
      { numRuns: 30 },
    );
  });

  test('planQuilt takes as long in all as its stages take', () => {
    holdForAnswers(({ time }) => {
      const { total, ...stages } = time;
      expect(Object.values(stages).reduce((sum, one) => sum + one, 0)).toBeCloseTo(total, 3);
    });
  });

  test('planQuilt has pieces for every block in each layer, and cells for every print', () => {
    holdForAnswers(({ fabrics, grid, layout }) => {
      for (const role of ['top', 'backing']) {
        const rows = fabrics.filter((row) => row.role === role);
        expect(rows.reduce((sum, row) => sum + row.pieces, 0)).toBe(grid.blocks);
      }
      const letters = layout.cells.join('');
      expect(letters).toHaveLength(grid.blocks);
      const tops = fabrics.filter((row) => row.role === 'top');
      for (const [index, row] of tops.entries()) {
        const letter = String.fromCharCode(65 + index);
        expect(letters.split(letter).length - 1).toBe(row.pieces);
      }
    });
  });

  test('planQuilt with explain derives what it says, to the figure', () => {
    holdForAnswers((_, request) => {
      const answer = planFor({ ...request, explain: true });
      expect(judgeDerivations(answer.why ?? [], answer)).toEqual([]);
      expect(answer.why?.length).toBeGreaterThan(50);
    });
  });

  test('planQuilt with prints by count lays just those counts', () => {
    const prints = [
      { id: 'red', count: 1 },
      { id: 'blue', count: 5 },
    ];
    const layers = [{ role: 'top', prints }, { role: 'backing' }] as const;
    const { fabrics } = planFor({ target: { columns: 2, rows: 3 }, layers });
    expect(fabrics.map(({ print, pieces }) => [print, pieces])).toEqual([
      ['red', 1],
      ['blue', 5],
      [undefined, 6],
    ]);
  });

  test('planQuilt covers a bed with its drops', () => {
    const { wish, fit, size } = planFor({
      target: { bed: { width: 60, length: 80, drop: 12, footDrop: 6 } },
    });
    expect(wish).toEqual({ width: 84, height: 86, at: 'washed' });
    expect(size.washed.width).toBeCloseTo(84 + fit.width, 4);
  });

  test('planQuilt of one block has nothing to join and still answers', () => {
    const { thread, mismatch, layout } = planFor({
      target: { columns: 1, rows: 1 },
      tolerance: { seam: 0, cut: 0 },
    });
    expect([thread.joins, thread.rows]).toEqual([0, 0]);
    expect(mismatch).toMatchObject({ rowDeviation: 0, within: 100 });
    expect(layout.cells).toHaveLength(1);
  });

  test('planQuilt warns of what was not measured only where something was not', () => {
    const measured = { shrink: { length: 4.2, width: 3.1 } };
    const warns = (request: PlanRequest) =>
      planFor(request).cautions.some(({ code }) => code === 'unmeasured-shrink');
    expect(warns({ target })).toBe(true);
    const layers = [
      { role: 'top', ...measured },
      { role: 'backing', ...measured },
    ] as const;
    expect(warns({ target, layers })).toBe(false);
  });
});
