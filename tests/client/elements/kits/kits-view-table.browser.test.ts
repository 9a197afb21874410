import { describe, expect, test } from 'vitest';
import { tableView } from '../../../../client/elements/kits/kits-view-table.ts';
import { readText, renderFresh } from '../../../support/render.ts';
import { kitsContext } from '../../../support/stock.ts';

describe('tableView', () => {
  test('says what the costs are of, and in what', () => {
    expect(readText(renderFresh(tableView(kitsContext())), 'th.cost')).toBe('Cost a yard USD');
    const metric = { ...kitsContext({ draft: { unit: 'cm' } }), unit: 'cm' } as const;
    expect(readText(renderFresh(tableView(metric)), 'th.cost')).toBe('Cost a metre EUR');
  });

  test('shows faults at their cells', () => {
    const faults = [{ code: 'wrong-type', path: ['bolts', 1, 'cost'], received: 'dear' }] as const;
    const root = renderFresh(tableView(kitsContext({ faults })));
    expect(readText(root, '#cell-1-cost-fault')).toContain('“dear” is not an amount');
  });

  test('says that bolts are invented while some are', () => {
    const mine = { draft: { 'bolts.0.id': 'Mine' } } as const;
    expect(renderFresh(tableView(kitsContext())).querySelector('.invented')).not.toBeNull();
    expect(renderFresh(tableView(kitsContext(mine))).querySelector('.invented')).toBeNull();
  });
});
