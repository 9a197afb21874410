import type { Unit } from '#core/contract.ts';
import { BLANK_ROW, type Cloth, type Row } from './swatch-table.ts';

/** Marks set so far apart before the wash. */
const BEFORE = { in: '18', cm: '25' } as const;

/** After one wash, along and across: the invented shop measures in centimetres; in inches the same to the eighth. */
const AFTER: Readonly<Record<Unit, Readonly<Record<string, readonly [string, string]>>>> = {
  cm: {
    'quilting-cotton': ['24.1 24.2 24.0', '24.4 24.5 24.3'],
    flannel: ['23.4 23.5 23.3', '24.1 24.0 24.2'],
  },
  in: {
    'quilting-cotton': ['17⅜ 17⅜ 17¼', '17⅝ 17⅝ 17½'],
    flannel: ['16⅞ 16⅞ 16¾', '17⅜ 17¼ 17⅜'],
  },
};

/** Swatches of an invented shop, so that there is something to see before anybody has measured. */
export function exampleSwatches(unit: Unit): readonly Cloth[] {
  return Object.entries(AFTER[unit]).map(([fabric, [along, across]]) => {
    const lengths = along.split(' ');
    const widths = across.split(' ');
    const rows = lengths.map((length, index): Row => {
      const width = widths[index] ?? '';
      const before = BEFORE[unit];
      return {
        ...BLANK_ROW,
        'length.before': before,
        'length.after': length,
        'width.before': before,
        'width.after': width,
      };
    });
    return { fabric, washes: '1', rows };
  });
}

/** Whether some row of a table is one of the invented shop. */
export function holdsExample(cloths: readonly Cloth[], unit: Unit): boolean {
  const invented = exampleSwatches(unit).flatMap(({ fabric, rows }) => rows.map(keyOf(fabric)));
  return cloths.some(({ fabric, rows }) =>
    rows.map(keyOf(fabric)).some((key) => invented.includes(key)),
  );
}

function keyOf(fabric: string) {
  return (row: Row) => [fabric, ...Object.values(row)].join(' ');
}
