import { expect, test } from 'vitest';
import type { Frozen, SameShape } from '../../../client/data/same-shape.ts';

interface Pair {
  readonly width: number;
  readonly height: number;
}

test('SameShape<A, B> is true of one shape however it is written', () => {
  const written: SameShape<Pair & { c: 1 }, { width: number; height: number; c: 1 }> = true;
  const lists: SameShape<{ a: readonly Pair[] }, { a: Pair[] }> = true;
  const unions: SameShape<{ a: { x: 1 } | { y: 1 } }, { a: { y: 1 } | { x: 1 } }> = true;
  expect([written, lists, unions]).toEqual([true, true, true]);
});

test('SameShape<A, B> is false where a field is more, missing, optional or of another type', () => {
  const more: SameShape<{ a: { c: 1; d: 2 } }, { a: { c: 1 } }> = false;
  const missing: SameShape<{ a: { c: 1 } }, { a: { c: 1; d?: 2 } }> = false;
  const optional: SameShape<{ a: { c?: 1 } }, { a: { c: 1 } }> = false;
  const blank: SameShape<{ a?: 1 }, { a?: 1 | undefined }> = false;
  const type: SameShape<{ a: 1 | 2 }, { a: 1 }> = false;
  expect([more, missing, optional, blank, type]).not.toContain(true);
});

test('Frozen<T> lets a shape of optional fields alone stand for one that has none of them', () => {
  const target: Frozen<{ bed?: Pair }> = { columns: 5 } as { readonly columns: number };
  expect(target).toEqual({ columns: 5 });
});
