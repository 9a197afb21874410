import { describe, expect, test } from 'vitest';
import { drawQuilt } from '#core/drawing/draw-quilt.ts';
import { typesetFractions } from '#core/drawing/typeset-fractions.ts';
import { writeLength } from '#core/write-length.ts';
import { planThrow } from '../../support/plan-throw.ts';

const texts = (state: 'sewn' | 'washed', plan = planThrow()) =>
  drawQuilt(plan, state).shapes.flatMap((shape) =>
    shape.part === 'measure-text' && shape.kind === 'text' ? [shape.text] : [],
  );
const parts = (state: 'sewn' | 'washed', plan = planThrow()) =>
  new Set(drawQuilt(plan, state).shapes.map(({ part }) => part));
const path = (part: string, plan = planThrow(), state: 'sewn' | 'washed' = 'sewn') => {
  const found = drawQuilt(plan, state).shapes.find((shape) => shape.part === part);
  return found?.kind === 'path' ? found : undefined;
};

describe('drawQuilt', () => {
  test('drawQuilt(plan, state) is in one box for both states, so that the shrink shows', () => {
    const plan = planThrow();
    expect(drawQuilt(plan, 'washed').box).toEqual(drawQuilt(plan, 'sewn').box);
  });

  test('drawQuilt(plan, state, unit) moves nothing and writes its size in that unit', () => {
    const plan = planThrow();
    const metric = drawQuilt(plan, 'sewn', 'cm');
    expect(metric.box).toEqual(drawQuilt(plan, 'sewn').box);
    const said = metric.shapes.flatMap((shape) =>
      shape.part === 'measure-text' && shape.kind === 'text' ? [shape.text] : [],
    );
    const { width, height } = plan.size.sewn;
    // An inch is 2.54 cm by definition (international yard and pound agreement, 1959).
    expect(said.map((text) => text.replace('\u00a0', ' '))).toEqual(
      [width, height].map((side) => `${Math.round(side * 25.4) / 10} cm`),
    );
  });

  test('drawQuilt writes the size of its state', () => {
    const { size } = planThrow();
    const write = (inches: number) => typesetFractions(writeLength(inches * 25.4, 'in'));
    expect(texts('sewn')).toEqual([write(size.sewn.width), write(size.sewn.height)]);
    expect(texts('washed')).toEqual([write(size.washed.width), write(size.washed.height)]);
  });

  test('drawQuilt writes centimetres where they were asked for', () => {
    const plan = planThrow({ unit: 'cm' });
    for (const text of texts('sewn', plan)) expect(text).toMatch(/^[\d.]+ cm$/);
  });

  test('drawQuilt shows the sewn size behind a washed quilt alone', () => {
    expect(parts('washed').has('outline')).toBe(true);
    expect(parts('sewn').has('outline')).toBe(false);
    const [width, height] = [planThrow().size.sewn.width, planThrow().size.sewn.height].map(
      (inches) => Math.round(inches * 254) / 10,
    );
    const outline = path('outline', planThrow(), 'washed')?.d;
    expect(outline).toBe(`M0 0h${width}v${height}h-${width}z`);
  });

  test('drawQuilt draws snips at a whole multiple of their pitch', () => {
    const { block } = planThrow();
    const [tag = 0, gap = 0] = (path('snip')?.dash ?? '').split(' ').map(Number);
    const multiple = (tag + gap) / (block.snipPitch * 25.4);
    expect(Math.abs(multiple - Math.round(multiple))).toBeLessThan(0.02);
    expect(multiple).toBeGreaterThan(0.98);
  });

  test('drawQuilt draws the snips one by one where they are far enough apart', () => {
    const plan = planThrow({ block: { snipPitch: 1 } });
    const [tag = 0, gap = 0] = (path('snip', plan)?.dash ?? '').split(' ').map(Number);
    expect(tag + gap).toBeCloseTo(25.4, 0);
  });

  test('drawQuilt shows the mattress of a bed as given, head at the top', () => {
    const plan = planThrow({ target: { bed: { width: 60, length: 80, drop: 10, footDrop: 6 } } });
    const { width } = plan.size.sewn;
    const left = ((width - 60) / 2) * 25.4;
    expect(path('mattress', plan)?.d).toBe(`M${Math.round(left * 10) / 10} 0h1524v2032h-1524z`);
  });

  test('drawQuilt shows the mattress that a named bed has, and none for a throw', () => {
    const queen = path('mattress', planThrow({ target: { size: 'queen' } }))?.d;
    expect(queen).toMatch(/h1524v2032h-1524z$/);
    expect(parts('sewn').has('mattress')).toBe(false);
  });

  test('drawQuilt letters the blocks where there are several prints and few enough blocks', () => {
    const letters = (plan = planThrow()) =>
      drawQuilt(plan, 'sewn').shapes.filter(({ part }) => part === 'letter').length;
    const top = (prints: number) => [{ role: 'top', prints }, { role: 'backing' }] as const;
    expect(letters()).toBe(planThrow().grid.blocks);
    expect(letters(planThrow({ layers: top(1) }))).toBe(0);
    expect(letters(planThrow({ target: { columns: 20, rows: 20 }, layers: top(4) }))).toBe(0);
  });

  test('drawQuilt keeps the largest quilt within what a page can bear', () => {
    const plan = planThrow({ target: { columns: 50, rows: 50 }, block: { cut: 4 } });
    const size = JSON.stringify(drawQuilt(plan, 'washed')).length;
    expect(size).toBeLessThan(500_000);
  });

  test('drawQuilt holds no number that is none', () => {
    for (const state of ['sewn', 'washed'] as const) {
      expect(JSON.stringify(drawQuilt(planThrow(), state))).not.toMatch(/NaN|null|Infinity/);
    }
  });
});
