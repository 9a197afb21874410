import { describe, expect, test } from 'vitest';
import type { AnyDraft } from '../../../../client/data/draft.ts';
import { exampleSwatches } from '../../../../client/elements/wash/example-swatches.ts';
import { washErrand } from '../../../../client/elements/wash/wash-errand.ts';
import { splitDraft } from '../../../../client/elements/wash/wash-state.ts';

const SWATCH = {
  'swatches.0.fabric': 'Rose',
  'swatches.0.direction': 'length',
  'swatches.0.before': '10',
  'swatches.0.after': '9',
  'swatches.0.washes': '1',
};

describe('washErrand', () => {
  test('washErrand begins with the swatches of the invented shop, in the unit of the draft', () => {
    expect(splitDraft(washErrand.complete({})).cloths).toEqual(exampleSwatches('in'));
    expect(splitDraft(washErrand.complete({ unit: 'cm' })).cloths).toEqual(exampleSwatches('cm'));
  });

  test('washErrand leaves swatches and a size that are there as they are', () => {
    const draft: AnyDraft = washErrand.complete(SWATCH);
    expect(draft).toMatchObject(SWATCH);
    expect(washErrand.complete({ 'wanted.width': '40' })).not.toHaveProperty('swatches.0.fabric');
  });

  test('washErrand misses the other side of a size, and nothing where no size is given', () => {
    const blank = washErrand.findBlank({ ...SWATCH, 'sewn.width': '40', 'sewn.height': '' });
    expect(blank).toEqual([{ code: 'empty', path: ['sewn', 'height'] }]);
    expect(washErrand.findBlank(SWATCH)).toEqual([]);
  });

  test('washErrand keeps to be mended what has a cell or a field', () => {
    const isMendable = (...path: string[]) =>
      washErrand.isMendable?.({ code: 'not-a-length', path });
    expect(isMendable('swatches', '0', 'after')).toBe(true);
    expect(isMendable('wanted', 'width')).toBe(true);
    expect(isMendable('grain')).toBe(false);
  });
});
