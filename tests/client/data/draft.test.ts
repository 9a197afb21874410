import { describe, expect, expectTypeOf, test } from 'vitest';
import {
  type Draft,
  type DraftPath,
  dropFaulty,
  editDraft,
  writeQuery,
} from '../../../client/data/draft.ts';

describe('writeQuery', () => {
  test('writeQuery(draft) is read back by URLSearchParams as what was typed', () => {
    const draft: Draft = { 'target.width': '8½ & "more"', 'target.height': '21,5', unit: 'cm' };
    expect(Object.fromEntries(new URLSearchParams(writeQuery(draft)))).toEqual(draft);
  });

  test('writeQuery({}) is empty', () => {
    expect(writeQuery({})).toBe('');
  });
});

describe('editDraft', () => {
  test('editDraft(draft, path) without a value takes the place out', () => {
    expect(editDraft({ unit: 'cm', grain: 'aligned' }, 'grain')).toEqual({ unit: 'cm' });
  });

  test('editDraft takes out what lay under the place, and nothing that only begins alike', () => {
    const draft: Draft = {
      'layers.1.prints.0.id': 'A',
      'layers.1.prints': '2',
      'layers.1.role': 'top',
    };
    expect(editDraft(draft, 'layers.1.prints', '3')).toEqual({
      'layers.1.prints': '3',
      'layers.1.role': 'top',
    });
  });

  test('editDraft changes no draft that it was given', () => {
    const draft: Draft = Object.freeze({ unit: 'in' as const });
    expect(editDraft(draft, 'unit', 'cm')).toEqual({ unit: 'cm' });
  });
});

describe('dropFaulty', () => {
  const draft: Draft = {
    'target.size': 'lap',
    'block.seam': 'wide',
    'block.cut': '8',
    washes: '999',
  };

  test('dropFaulty takes out the places at fault and all under them', () => {
    expect(dropFaulty(draft, [{ code: 'wrong-type', path: ['block'] }])).toEqual({
      'target.size': 'lap',
      washes: '999',
    });
  });

  test('dropFaulty takes out everything where the fault is of the whole', () => {
    expect(dropFaulty(draft, [{ code: 'malformed-query', path: [] }])).toEqual({});
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
