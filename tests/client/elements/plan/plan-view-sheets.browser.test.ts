import { describe, expect, test } from 'vitest';
import { factsView, shoppingView } from '../../../../client/elements/plan/plan-view-sheets.ts';
import { watchContext } from '../../../support/plan-context.ts';
import { planThrow } from '../../../support/plan-throw.ts';
import { find, readText, renderFresh } from '../../../support/render.ts';

const plan = planThrow();

describe('shoppingView', () => {
  test('shoppingView has a row for each cloth with what to buy, strips and squares', () => {
    const root = renderFresh(shoppingView(watchContext(), plan));
    const rows = [...root.querySelectorAll('tbody tr')];
    expect(rows).toHaveLength(plan.fabrics.length);
    const cells = rows.map((row) =>
      [...row.querySelectorAll('td')].map((cell) => cell.textContent?.trim()),
    );
    for (const [index, { strips, perStrip, pieces, spare, buy }] of plan.fabrics.entries()) {
      expect(cells[index]?.slice(1)).toEqual([`${strips} × ${perStrip}`, `${pieces + spare}`]);
      expect(cells[index]?.[0]).toContain(buy.unit);
    }
  });

  test('shoppingView heads its columns and its rows', () => {
    const root = renderFresh(shoppingView(watchContext(), plan));
    expect(root.querySelectorAll('thead th[scope=col]')).toHaveLength(4);
    expect(root.querySelectorAll('tbody th[scope=row]')).toHaveLength(plan.fabrics.length);
  });

  test('shoppingView calls a print by its name where it has one', () => {
    const layers = [
      { role: 'top', prints: [{ id: 'Blue sprig', color: '#123456' }, { id: 'B' }] },
      { role: 'backing' },
    ] as const;
    const named = planThrow({ layers });
    const root = renderFresh(shoppingView(watchContext({ answer: named }), named));
    expect(readText(root, 'tbody th')).toContain('Blue sprig');
    expect(find(root, 'tbody .face').getAttribute('fill')).toBe('#123456');
  });

  test('shoppingView leaves out prints that no block is left for, and says so', () => {
    const few = planThrow({ target: { columns: 1, rows: 2 }, block: { cut: 8 } });
    const root = renderFresh(shoppingView(watchContext({ answer: few }), few));
    expect(root.querySelectorAll('tbody tr')).toHaveLength(3);
    expect(root.textContent).toContain('No block is left for 2 prints.');
    const all = renderFresh(shoppingView(watchContext(), plan));
    expect(all.textContent).not.toContain('No block is left');
  });

  test('shoppingView leaves room for a shop', () => {
    const root = renderFresh(shoppingView(watchContext(), plan));
    expect(root.querySelector('slot[name=shopping]')).not.toBeNull();
  });
});

describe('factsView', () => {
  test('factsView says hours, weight, row ends and shrink with their figures', () => {
    const text = renderFresh(factsView(watchContext(), plan)).textContent ?? '';
    expect(text).toContain(`${Math.round(plan.mismatch.within)} in 100`);
    expect(text).toMatch(/dry, .* wet: a household washer takes it/);
    expect(text).toMatch(/[\d.]+\u00a0% across/);
    expect(text).not.toMatch(/undefined|NaN/);
  });

  test('factsView says the size as sewn and the seam, which are wanted at the machine', () => {
    const text = renderFresh(factsView(watchContext(), plan)).textContent ?? '';
    expect(text.replaceAll('\u00a0', ' ')).toContain('52 × 62 in. Seam 1 in.');
  });

  test('factsView says nothing of snipping where there is none', () => {
    const still = { ...plan, time: { ...plan.time, snip: 0 } };
    const text = renderFresh(factsView(watchContext(), still)).textContent ?? '';
    expect(text).toContain('at the table.');
    expect(text).not.toContain('snipping');
  });

  test('factsView never puts a minus before nothing', () => {
    const change = { width: 0, height: 0.04 };
    const still = { ...plan, size: { ...plan.size, change } };
    const text = renderFresh(factsView(watchContext(), still)).textContent ?? '';
    expect(text).toContain('0\u00a0% across, 0\u00a0% down');
    expect(text).not.toContain('-0');
  });

  test('factsView says that cloth grew with a minus and never two', () => {
    const grown = { ...plan, size: { ...plan.size, change: { width: 1.24, height: -2 } } };
    const text = renderFresh(factsView(watchContext(), grown)).textContent ?? '';
    expect(text).toContain('-1.2\u00a0% across, 2\u00a0% down');
  });
});
