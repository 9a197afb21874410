import { describe, expect, test } from 'vitest';
import type { Step } from '#core/contract.ts';
import { orderWork, type WorkFacts } from '#core/sewing/order-work.ts';
import { deepFreeze } from '../../support/deep-freeze.ts';

const FACTS: WorkFacts = deepFreeze({
  unit: 'in',
  columns: 6,
  rows: 8,
  cut: 215.9,
  seam: 25.4,
  snipDepth: 12.7,
  snipPitch: 6.35,
  clearance: 12.7,
  fabrics: ['quilting-cotton', 'flannel'],
  pieces: 102,
  snips: 6336,
  needle: '100/16',
  chained: true,
  borderPasses: 2,
  prewashed: [],
  isMeasured: false,
  within: 88.4,
  ease: 12.7,
  wet: '3.4 lb',
});
const STAGES = ['prepare', 'cut', 'stack', 'quilt', 'snip', 'layout', 'join', 'border', 'wash'];

function steps(change: Partial<WorkFacts> = {}): readonly Step[] {
  return orderWork({ ...FACTS, ...change });
}

function find(id: string, change: Partial<WorkFacts> = {}): Step | undefined {
  return steps(change).find((step) => step.id === id);
}

describe('orderWork', () => {
  test('orderWork goes through the stages in the order of the trade, each id once', () => {
    const ids = steps().map((step) => step.id);
    expect(new Set(ids).size).toBe(ids.length);
    const order = steps().map((step) => STAGES.indexOf(step.stage));
    expect(order).toEqual(order.toSorted((one, other) => one - other));
    expect(new Set(order).size).toBe(STAGES.length);
  });

  test('orderWork counts what there is to do', () => {
    const counts = Object.fromEntries(steps().map((step) => [step.id, step.count]));
    expect(counts).toMatchObject({
      cut: 102,
      stack: 48,
      'quilt-first': 48,
      part: 47,
      'quilt-second': 48,
      snip: 6336,
      layout: 48,
      join: 40,
      'join-rows': 7,
      border: 2,
    });
  });

  test('orderWork says its figures in the unit of the request', () => {
    expect(find('cut')?.do).toBe('Cut 102 squares of 8 1/2 in');
    expect(find('cut', { unit: 'cm' })?.do).toBe('Cut 102 squares of 21.59 cm');
    expect(find('snip')?.detail).toContain('1/2 in deep, 1/4 in apart, 1/2 in short of the seam');
    expect(find('join-rows')?.detail).toContain('within 1/2 in about 88 times in 100');
    expect(find('wash')?.detail).toContain('3.4 lb');
  });

  test('orderWork never says that the snips stop at nothing', () => {
    expect(find('snip', { clearance: 1 })?.detail).toContain('less than 1/16 in short of the seam');
  });

  test('orderWork finds the middle: between blocks 3 and 4 of six, at block 4 of seven', () => {
    expect(find('join-rows')?.detail).toContain('between blocks 3 and 4');
    expect(find('join-rows', { columns: 7 })?.detail).toContain('at block 4');
  });

  test('orderWork prewashes what is to be prewashed, and asks for a test block where cloth was not measured', () => {
    expect(find('prewash', { prewashed: ['backing'] })?.do).toContain('cloth of the backing');
    expect(find('prewash', { prewashed: ['top', 'backing'] })?.do).toContain('top and backing');
    expect(find('prewash')).toBeUndefined();
    expect(find('swatch', { prewashed: ['backing'] })).toBeDefined();
    expect(find('swatch', { isMeasured: true })).toBeUndefined();
  });

  test('orderWork parts a chain only where there is one', () => {
    expect(find('part', { chained: false })).toBeUndefined();
    expect(find('quilt-first', { chained: false })?.detail).toContain('Cut the thread');
  });

  test('orderWork joins nothing that is not there', () => {
    expect(find('join', { columns: 1 })).toBeUndefined();
    expect(find('join-rows', { rows: 1 })).toBeUndefined();
    expect(find('part', { columns: 1, rows: 1 })).toBeUndefined();
    expect(steps({ columns: 1, rows: 1 }).every((step) => step.count > 0)).toBe(true);
    expect(find('layout', { columns: 1, rows: 1 })).toBeUndefined();
  });

  test('orderWork warns at the cutter, the snips, the crossings and the dryer', () => {
    const told = steps().flatMap((step) => step.cautions);
    for (const code of [
      'rotary-cutter',
      'repetitive-snipping',
      'needle-at-crossings',
      'dryer-lint',
    ]) {
      expect(told).toContain(code);
    }
  });

  test('orderWork stacks the cloth that this quilt is of, from the bottom up', () => {
    expect(find('stack')?.detail).toContain('Flannel at the bottom, quilting cotton on top');
    const fabrics = ['quilting-cotton', 'fleece', 'denim'] as const;
    expect(find('stack', { fabrics })?.detail).toContain(
      'Denim at the bottom, then fleece, quilting cotton on top',
    );
  });

  test('orderWork speaks of one as one', () => {
    const lone = { columns: 1, rows: 1, pieces: 2 };
    expect(find('stack', lone)?.do).toBe('Stack 1 block of 2 layers');
    expect(find('quilt-first', lone)?.detail).toContain('Cut the thread');
    expect(find('join', { columns: 5, rows: 1 })?.do).toContain('1 row of 5');
  });

  test('orderWork promises nothing of row ends where no ease is allowed', () => {
    expect(find('join-rows', { ease: 0, within: 0 })?.detail).not.toContain('washes out');
    expect(find('join-rows', { within: 99.6 })?.detail).toContain('nearly always');
  });
});
