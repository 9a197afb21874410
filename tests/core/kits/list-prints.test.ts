import { describe, expect, test } from 'vitest';
import type { Print } from '#core/contract.ts';
import { listPrints } from '#core/kits/list-prints.ts';
import { resolvePlan } from '#core/wish/resolve-plan.ts';

const listOf = (prints: number | readonly Print[]) => {
  const layers = [{ role: 'top' as const, prints }, { role: 'backing' as const }];
  const read = resolvePlan({ target: { columns: 2, rows: 2 }, layers });
  if (!read.ok) throw new Error('refused');
  return listPrints(read.value.input)?.map(({ id }) => id);
};

describe('listPrints', () => {
  test('listPrints of a number of prints is nothing: any bolt will do', () => {
    expect(listOf(3)).toBeUndefined();
    expect(listOf([{ id: 'A' }, { id: 'B' }])).toBeUndefined();
  });

  test('listPrints of named or counted prints is those', () => {
    expect(listOf([{ id: 'Rust' }, { id: 'B' }])).toEqual(['Rust', 'B']);
    expect(listOf([{ id: 'A', count: 4 }])).toEqual(['A']);
  });
});
