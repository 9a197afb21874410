import { describe, expect, test } from 'vitest';
import { readLength } from '#core/read-length.ts';
import {
  exampleSwatches,
  holdsExample,
} from '../../../../client/elements/wash/example-swatches.ts';
import { type CellName, typeCell } from '../../../../client/elements/wash/swatch-table.ts';
import { loadScenario } from '../../../../demo-data/load-scenario.ts';

const { bolts } = loadScenario();
const BOLTS = { 'quilting-cotton': 'Heron dot', flannel: 'Fog flannel' };
const read = (text: string, unit: 'in' | 'cm') => {
  const outcome = readLength(text, unit);
  if (!outcome.ok) throw new Error(text);
  return outcome.value;
};

describe('exampleSwatches', () => {
  test('exampleSwatches("cm") are those of the invented shop', () => {
    for (const { fabric, rows } of exampleSwatches('cm')) {
      const bolt = bolts.find(({ id }) => id === BOLTS[fabric as keyof typeof BOLTS]);
      expect(bolt?.fabric).toBe(fabric);
      const column = (name: CellName) => rows.map((row) => Number(row[name]));
      expect(column('length.after')).toEqual(bolt?.swatches.length);
      expect(column('width.after')).toEqual(bolt?.swatches.width);
      expect(new Set(column('length.before'))).toEqual(new Set([bolt?.swatches.before]));
    }
  });

  test('exampleSwatches("in") say the same to the nearest eighth', () => {
    for (const [index, cloth] of exampleSwatches('in').entries()) {
      const metric = exampleSwatches('cm')[index];
      for (const [at, row] of cloth.rows.entries()) {
        for (const way of ['length', 'width'] as const) {
          const share =
            read(metric?.rows[at]?.[`${way}.after`] ?? '', 'cm') /
            read(metric?.rows[at]?.[`${way}.before`] ?? '', 'cm');
          const before = read(row[`${way}.before`], 'in');
          const off = Math.abs(read(row[`${way}.after`], 'in') - share * before);
          expect(off).toBeLessThanOrEqual(25.4 / 16);
        }
      }
    }
  });
});

describe('holdsExample', () => {
  test('holdsExample is true while one invented row is left', () => {
    const [first] = exampleSwatches('in');
    if (first === undefined) throw new Error('There is no example.');
    expect(holdsExample([first], 'in')).toBe(true);
    expect(holdsExample([first], 'cm')).toBe(false);
    const own = first.rows.reduce(
      (cloth, _, row) => typeCell(cloth, { row, name: 'length.after' }, '9'),
      first,
    );
    expect(holdsExample([own], 'in')).toBe(false);
    expect(holdsExample([], 'in')).toBe(false);
  });
});
