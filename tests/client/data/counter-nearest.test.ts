import { describe, expect, test } from 'vitest';
import { findNearest } from '../../../client/data/counter-nearest.ts';
import { readCounter } from '../../../client/data/counter-question.ts';
import { readRows } from '../../../client/data/counter-rows.ts';
import type { AnyDraft } from '../../../client/data/draft.ts';

function understand(question: string) {
  const read = readCounter(question);
  if (!read.ok) throw new Error(JSON.stringify(read.faults));
  return read.value;
}

function nearestFor(question: string, shop: AnyDraft, at: number) {
  const counter = understand(question);
  return findNearest(counter, readRows(counter.needs, shop, ''), at);
}

describe('findNearest', () => {
  const question = 'target.width=40&target.height=50';

  test('findNearest names a quilt whose own plan asks for no more than is left', () => {
    const shop = { '4.left': '2' };
    const nearest = nearestFor(question, shop, 4);
    if (nearest === undefined) throw new Error('Two yards make a quilt');
    const counter = understand(nearest.question);
    const [row] = readRows(counter.needs, shop, '').slice(4);
    expect(row?.left?.squares).toBeGreaterThanOrEqual(row?.need.squares ?? Number.NaN);
    expect(row?.ask.length).toBeLessThanOrEqual(2 * 914.4 + 1e-6);
    expect(counter.plan?.choice.chosen).toMatchObject({
      grid: { columns: nearest.columns, rows: nearest.rows },
    });
  });

  test('findNearest takes what was bought for all that there is of it', () => {
    const alone = nearestFor(question, { '4.left': '2 1/4' }, 4);
    const shop = { '4.left': '2 1/4', '0.got': '1', '1.got': '1', '2.got': '1', '3.got': '1' };
    const after = nearestFor(question, shop, 4);
    if (alone === undefined || after === undefined) throw new Error('There is a quilt for each');
    const rows = readRows(understand(after.question).needs, {}, '');
    for (const { ask } of rows.slice(0, 4)) expect(ask.buy?.amount).toBeLessThanOrEqual(0.75);
  });

  test('findNearest keeps the proportion of prints that were counted', () => {
    const counted =
      'target.columns=5&target.rows=6&block.cut=8&layers.0.role=top&layers.0.prints.0.id=Oat&layers.0.prints.0.count=20&layers.0.prints.1.id=Moss&layers.0.prints.1.count=10&layers.1.role=backing';
    const nearest = nearestFor(counted, { '2.left': '1' }, 2);
    if (nearest === undefined) throw new Error('A yard makes a quilt');
    const pieces = understand(nearest.question).needs.map(({ squares, spare }) => squares - spare);
    expect((pieces[0] ?? 0) + (pieces[1] ?? 0)).toBe(nearest.columns * nearest.rows);
    expect(pieces[0]).toBeGreaterThan(pieces[1] ?? 0);
  });

  test('findNearest is nothing without a plan, and where nothing comes out', () => {
    expect(nearestFor('cut=8.5&count=40', { '0.left': '1' }, 0)).toBeUndefined();
    expect(nearestFor(question, { '4.left': '0.05' }, 4)).toBeUndefined();
  });
});
