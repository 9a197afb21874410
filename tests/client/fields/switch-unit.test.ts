import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { readLength } from '#core/read-length.ts';
import type { Draft } from '../../../client/data/draft.ts';
import { switchUnit } from '../../../client/fields/switch-unit.ts';

const NOTHING = { called: {}, input: undefined };
const millimetres = (text: string | undefined, unit: 'in' | 'cm') => {
  const read = readLength(text ?? '', unit);
  return read.ok ? read.value : Number.NaN;
};

describe('switchUnit', () => {
  test('switchUnit there and back gives every letter that was typed', () => {
    const typed: Draft = {
      'target.width': '8 1/2',
      'target.height': '60,5',
      'block.cut': '21.5 cm',
      'block.seam': 'wide',
      'layers.0.width': '',
      washes: '3',
    };
    const there = switchUnit(typed, 'cm', NOTHING);
    const back = switchUnit(there.draft, 'in', { called: there.called, input: undefined });
    expect(back.draft).toEqual({ ...typed, unit: 'in' });
  });

  test('switchUnit says the same length in the other unit', () => {
    fc.assert(
      fc.property(fc.integer({ min: 1, max: 1600 }), (eighths) => {
        const inches = String(eighths / 8);
        const { draft } = switchUnit({ 'target.width': inches }, 'cm', NOTHING);
        expect(millimetres(draft['target.width'], 'cm')).toBeCloseTo(millimetres(inches, 'in'), 2);
      }),
    );
  });

  test('switchUnit reads a fraction from the plan that was made of it', () => {
    const input = { target: { width: 8.5 } };
    const { draft } = switchUnit({ 'target.width': '8 1/2' }, 'cm', { called: {}, input });
    expect(draft['target.width']).toBe('21.59');
  });

  test('switchUnit gives a fraction that nobody has read yet the unit it was typed in', () => {
    const { draft } = switchUnit({ 'target.width': '8 1/2' }, 'cm', NOTHING);
    expect(millimetres(draft['target.width'], 'cm')).toBeCloseTo(215.9, 9);
  });

  test('switchUnit takes what was typed since for what it is', () => {
    const there = switchUnit({ 'target.width': '8 1/2' }, 'cm', NOTHING);
    const typed = { ...there.draft, 'target.width': '30' };
    const back = switchUnit(typed, 'in', { called: there.called, input: undefined });
    expect(millimetres(back.draft['target.width'], 'in')).toBeCloseTo(300, 2);
  });

  test('switchUnit leaves everything that is no length alone', () => {
    const draft: Draft = {
      'target.columns': '5',
      'target.rows': '6',
      'layers.0.prints': '4',
      'layers.0.shrink.length': '3',
      'layers.0.shrink.width': '2',
      'layers.0.gsm': '140',
      'layers.0.prints.0.id': '12',
      spare: '5',
      'stitch.ratio': '3',
    };
    expect(switchUnit(draft, 'cm', NOTHING).draft).toEqual({ ...draft, unit: 'cm' });
  });

  test('switchUnit changes every place that holds a length', () => {
    const places = [
      'target.width',
      'target.height',
      'target.bed.width',
      'target.bed.length',
      'target.bed.drop',
      'target.bed.footDrop',
      'block.cut',
      'block.seam',
      'block.snipDepth',
      'block.snipPitch',
      'cuts.0',
      'layers.0.width',
      'layers.0.selvage',
      'layers.0.prints.0.width',
      'swatches.0.before',
      'swatches.0.after',
      'swatches.0.diagonals.ac',
      'swatches.0.diagonals.bd',
      'sewn.width',
      'wanted.height',
      'fit',
      'stitch.length',
      'stitch.tail',
      'stitch.link',
      'stitch.bobbin',
      'tolerance.seam',
      'tolerance.cut',
      'tolerance.ease',
    ];
    const draft = Object.fromEntries(places.map((place) => [place, '10']));
    const { unit, ...said } = switchUnit(draft, 'cm', NOTHING).draft;
    expect(unit).toBe('cm');
    expect(new Set(Object.values(said))).toEqual(new Set(['25.4']));
  });

  test('switchUnit to the unit that it is in changes nothing', () => {
    const draft: Draft = { 'target.width': '8 1/2' };
    expect(switchUnit(draft, 'in', NOTHING).draft).toBe(draft);
  });
});
