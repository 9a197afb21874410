import { describe, expect, test } from 'vitest';
import { readHand } from '../../../client/data/hand-grid.ts';
import { writeLayoutAddress } from '../../../client/data/layout-address.ts';
import { computeLayout } from '../../../client/data/layout-on-device.ts';
import { planThrow } from '../../support/plan-throw.ts';

describe('writeLayoutAddress', () => {
  test('writeLayoutAddress asks for the grid, the prints and the counts of the plan, its cells behind', () => {
    const plan = planThrow();
    const address = writeLayoutAddress(plan);
    const { pathname, search, hash } = new URL(address ?? '', 'https://quilt.example');
    expect(pathname).toBe('/layout');
    expect(readHand(hash)).toEqual(plan.layout.cells);
    const outcome = computeLayout(search);
    if (!outcome.ok) throw new Error(JSON.stringify(outcome.faults));
    const { columns, rows, prints } = outcome.value.input;
    expect({ columns, rows }).toEqual({ columns: plan.grid.columns, rows: plan.grid.rows });
    const laid = [...plan.layout.cells.join('')];
    const counted = prints.map(
      (_, at) => laid.filter((cell) => cell.charCodeAt(0) === 65 + at).length,
    );
    expect(prints.map(({ count }) => count)).toEqual(counted);
  });

  test('writeLayoutAddress keeps names and colours whole', () => {
    const prints = [{ id: 'Moss & fern', color: '#1b2233' }, { id: 'Röte' }];
    const layers = [{ role: 'top', prints }];
    const plan = { grid: { columns: 2, rows: 1 }, input: { layers }, layout: { cells: ['BA'] } };
    const { searchParams } = new URL(writeLayoutAddress(plan) ?? '', 'https://quilt.example');
    expect(searchParams.get('prints.0.id')).toBe('Moss & fern');
    expect(searchParams.get('prints.0.color')).toBe('#1b2233');
    expect(searchParams.get('prints.1.id')).toBe('Röte');
  });

  test('writeLayoutAddress is nothing for one print, and beyond forty blocks a side', () => {
    const one = [{ role: 'top', prints: [{ id: 'Moss' }] }];
    const two = [{ role: 'top', prints: [{ id: 'Moss' }, { id: 'Rust' }] }];
    const address = (layers: typeof one, columns: number) =>
      writeLayoutAddress({
        ...{ grid: { columns, rows: 1 }, input: { layers } },
        layout: { cells: ['AB'.repeat(columns).slice(0, columns)] },
      });
    expect(address(one, 2)).toBeUndefined();
    expect(address(two, 41)).toBeUndefined();
    expect(address(two, 40)).toContain('columns=40');
  });
});
