import { describe, expect, test } from 'vitest';
import { computeWash } from '../../../../client/data/wash-on-device.ts';
import { exampleSwatches } from '../../../../client/elements/wash/example-swatches.ts';
import {
  chooseSizeKind,
  findSizeKind,
  hasNoField,
  listAll,
  setPlace,
  splitDraft,
  unitOf,
  writeAsked,
  writeTyped,
} from '../../../../client/elements/wash/wash-state.ts';

const FIRST = { ...splitDraft({}), cloths: exampleSwatches('in') };
const query = (asked: { readonly query: string }) => new URLSearchParams(asked.query);

describe('splitDraft', () => {
  test('splitDraft({}) is a quilt of the classic layers and a size', () => {
    expect(FIRST.draft).toEqual({
      'layers.0.role': 'top',
      'layers.1.role': 'backing',
      'wanted.width': '40',
      'wanted.height': '50',
    });
    expect(splitDraft({ unit: 'cm' }).draft['wanted.width']).toBe('100');
  });

  test('splitDraft keeps layers that are there, adds no size to swatches, joins wash counts', () => {
    const { draft, cloths } = splitDraft({
      'layers.0.role': 'backing',
      'washes.0': '1',
      'washes.1': '4',
      'swatches.0.direction': 'length',
    });
    expect(draft).toEqual({ 'layers.0.role': 'backing', washes: '1, 4' });
    expect(cloths.length).toBe(1);
  });
});

describe('writeAsked', () => {
  test('writeAsked asks what the core can answer', () => {
    expect(computeWash(writeAsked(FIRST).query).ok).toBe(true);
  });

  test('writeAsked tells each wash count as an item of a list', () => {
    const asked = writeAsked({ ...FIRST, draft: { ...FIRST.draft, washes: '1, 3;often' } });
    expect(query(asked).get('washes.1')).toBe('3');
    expect(query(asked).get('washes.2')).toBe('often');
  });

  test('writeAsked leaves out a size of which nothing was said, and tells of half of one', () => {
    const none = { ...FIRST.draft, 'wanted.width': '', 'wanted.height': ' ' };
    expect(writeAsked({ ...FIRST, draft: none })).toMatchObject({ blanks: [] });
    expect(query(writeAsked({ ...FIRST, draft: none })).has('wanted.height')).toBe(false);
    const half = { ...FIRST.draft, 'wanted.height': '' };
    expect(writeAsked({ ...FIRST, draft: half }).blanks).toEqual([
      { code: 'empty', path: ['wanted', 'height'] },
    ]);
  });
});

describe('chooseSizeKind and findSizeKind', () => {
  test('chooseSizeKind keeps the figures and comes back', () => {
    const sewn = chooseSizeKind(FIRST.draft, 'sewn');
    expect(sewn['sewn.width']).toBe('40');
    expect(sewn['wanted.width']).toBeUndefined();
    expect([FIRST.draft, sewn].map(findSizeKind)).toEqual(['wanted', 'sewn']);
    expect(chooseSizeKind(sewn, 'wanted')).toEqual(FIRST.draft);
  });
});

describe('writeTyped', () => {
  test('splitDraft(writeTyped(state)) is what was typed', () => {
    expect(splitDraft(writeTyped(FIRST))).toEqual(FIRST);
  });

  test('listAll lists two places a row, whole or not', () => {
    expect(listAll(FIRST.cloths).length).toBe(12);
  });
});

describe('hasNoField', () => {
  test.each([
    [['swatches', '0', 'after'], false],
    [['swatches', '0', 'diagonals', 'ac'], false],
    [['swatches', '0', 'direction'], true],
    [['wanted', 'width'], false],
    [['washes', '2'], false],
    [['grain'], true],
    [[], true],
  ])('hasNoField of a fault at %j is %j', (path, expected) => {
    expect(hasNoField({ code: 'empty', path })).toBe(expected);
  });
});

test('setPlace puts a value in, or takes the place out', () => {
  expect(setPlace({ unit: 'cm' }, 'grain', 'aligned')).toEqual({ unit: 'cm', grain: 'aligned' });
  expect(setPlace({ unit: 'cm' }, 'unit', undefined)).toEqual({});
  expect([unitOf({}), unitOf({ unit: 'cm' })]).toEqual(['in', 'cm']);
});
