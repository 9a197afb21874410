import { describe, expect, test } from 'vitest';
import { findRow, tell } from '../../support/tell-answer.ts';

const BOLTS =
  'plan.target.columns=4&plan.target.rows=5&plan.block.cut=8&bolts.0.id=Heron&bolts.0.role=top' +
  '&bolts.0.width=44&bolts.0.length=216&bolts.0.cost=1120&bolts.1.id=Fog&bolts.1.role=backing' +
  '&bolts.1.width=42&bolts.1.length=432&bolts.1.cost=890&costs.margin=40&currency=USD';

describe('tellKits', () => {
  test('tells the kits, their prints and their money in the currency', () => {
    const told = tell('kits', BOLTS);
    // 5 across 43 in, and 26 rows of 8 in from 215 in: 130 squares make 6 kits of 20.
    expect(told.title).toBe('6 kits from these bolts');
    expect(findRow(told, '6 kits alike')).toBe('20 of Heron');
    expect(findRow(told, 'Cost')).toMatch(/^\d+\.\d\d USD$/);
    expect(findRow(told, 'Price')).toMatch(/^\d+\.\d\d USD$/);
  });
  test('tells no money where none was given', () => {
    const told = tell('kits', BOLTS.replaceAll(/&bolts\.\d\.cost=\d+|&costs\.margin=40/g, ''));
    expect(told.tables.map(({ name }) => name)).toEqual(['Kits', 'Prints']);
  });
});
