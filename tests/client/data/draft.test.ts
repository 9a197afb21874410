import { describe, expect, expectTypeOf, test } from 'vitest';
import { type Draft, type DraftPath, writeQuery } from '../../../client/data/draft.ts';

describe('writeQuery', () => {
  test('writeQuery(draft) is read back by URLSearchParams as what was typed', () => {
    const draft: Draft = { 'target.width': '8½ & "more"', 'target.height': '21,5', unit: 'cm' };
    expect(Object.fromEntries(new URLSearchParams(writeQuery(draft)))).toEqual(draft);
  });

  test('writeQuery({}) is empty', () => {
    expect(writeQuery({})).toBe('');
  });
});

describe('DraftPath', () => {
  test('DraftPath knows the places of the contract and no others', () => {
    expectTypeOf<'target.bed.width'>().toExtend<DraftPath>();
    expectTypeOf<'layers.3.prints.7.color'>().toExtend<DraftPath>();
    expectTypeOf<'layers.0.prints'>().toExtend<DraftPath>();
    expectTypeOf<'layers.top.prints'>().not.toExtend<DraftPath>();
    expectTypeOf<'target.depth'>().not.toExtend<DraftPath>();
    expectTypeOf<'block'>().not.toExtend<DraftPath>();
  });
});
