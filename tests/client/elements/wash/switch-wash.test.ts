import { describe, expect, test } from 'vitest';
import { exampleSwatches } from '../../../../client/elements/wash/example-swatches.ts';
import { BLANK_ROW } from '../../../../client/elements/wash/swatch-table.ts';
import { switchWash } from '../../../../client/elements/wash/switch-wash.ts';

const TYPED = {
  cloths: [
    {
      fabric: 'Rose',
      washes: '3',
      rows: [
        { ...BLANK_ROW, 'length.before': '10', 'length.after': '9 1/2', ac: '14', bd: '13,5' },
        { ...BLANK_ROW, 'width.after': '25 cm' },
      ],
    },
  ],
  draft: { 'wanted.width': '40', 'layers.0.role': 'top', washes: '1, 3' },
};

describe('switchWash', () => {
  test('switchWash says each length in the other unit, in its own cell', () => {
    const { cloths, draft } = switchWash(TYPED, 'cm', {});
    expect(cloths).toEqual([
      {
        fabric: 'Rose',
        washes: '3',
        rows: [
          {
            ...BLANK_ROW,
            'length.before': '25.4',
            'length.after': '24.13',
            ac: '35.56',
            bd: '34.29',
          },
          { ...BLANK_ROW, 'width.after': '25 cm' },
        ],
      },
    ]);
    expect(draft).toEqual({
      'wanted.width': '101.6',
      'layers.0.role': 'top',
      washes: '1, 3',
      unit: 'cm',
    });
  });

  test('switchWash there and back gives every letter that was typed', () => {
    const { called, ...there } = switchWash(TYPED, 'cm', {});
    const back = switchWash(there, 'in', called);
    expect(back.cloths).toEqual(TYPED.cloths);
    expect(back.draft).toEqual({ ...TYPED.draft, unit: 'in' });
  });

  test('switchWash turns the invented swatches into those measured in that unit', () => {
    const { cloths } = switchWash({ cloths: exampleSwatches('in'), draft: {} }, 'cm', {});
    expect(cloths).toEqual(exampleSwatches('cm'));
  });
});
