import { describe, expect, test } from 'vitest';
import { bringLeaf } from '../../../../client/elements/plan/hand-out-bring.ts';
import { makeHandOut } from '../../../support/hand-out.ts';
import { watchContext } from '../../../support/plan-context.ts';
import { find, readText, renderFresh } from '../../../support/render.ts';

const show = (handOut = makeHandOut()) => renderFresh(bringLeaf(watchContext(), handOut));
const plain = (text: string) => text.replaceAll('\u00a0', ' ');

describe('bringLeaf', () => {
  test('bringLeaf has the teacher’s heading and note', () => {
    const root = show();
    expect(readText(root, 'h1')).toBe('Tuesday at six');
    expect(readText(root, '.own-note')).toBe('Bring tea.');
    const handOut = makeHandOut();
    const silent = show({ ...handOut, wish: { ...handOut.wish, note: '' } });
    expect(silent.querySelector('.own-note')).toBeNull();
  });

  test('bringLeaf lists cloth, thread, bobbins, needles and blades for one and for all', () => {
    const handOut = makeHandOut();
    const rows = [...show(handOut).querySelectorAll('.bring tbody tr')].map((row) =>
      [...row.children].map((cell) => plain((cell.textContent ?? '').trim())),
    );
    const { thread, bulk } = handOut.plan;
    expect(rows.slice(-3)).toEqual([
      ['Bobbins, wound full', '', `${thread.bobbins}`, `${12 * thread.bobbins}`],
      [`Machine needles, size ${bulk.needle}`, '', '1', '12'],
      ['Rotary blades, new', '', '1', '12'],
    ]);
    const backing = rows.find(([name]) => name === 'Flannel, backing');
    const need = handOut.plan.fabrics.at(-1);
    expect(backing?.[1]).toBe(`${(need?.pieces ?? 0) + (need?.spare ?? 0)}`);
    expect(backing?.slice(2).every((said) => / yd$/.test(said))).toBe(true);
  });

  test('bringLeaf never overstates what is left before the seam', () => {
    const block = { cut: 9, seam: 0.6, snipDepth: 0.5 };
    const text = plain(readText(show(makeHandOut({ block })), 'dl'));
    expect(text).toContain('Left uncut before the seam1/16 in');
    expect(text).toContain('Seam0.6 in');
  });

  test('bringLeaf has a letter in every block and names the rows', () => {
    const handOut = makeHandOut();
    const letters = [...show(handOut).querySelectorAll('svg .letter')];
    expect(letters.map(({ textContent }) => textContent?.trim()).join('')).toBe(
      handOut.plan.layout.cells.join(''),
    );
  });

  test('bringLeaf sets a long list in two columns', () => {
    const prints = Array.from({ length: 26 }, (_, at) => ({
      id: `Print ${at}`,
      share: 10 + 4 * at,
    }));
    const layers = (['top', 'backing'] as const).map((role) => ({ role, prints }));
    const root = show(makeHandOut({ target: { size: 'king' }, block: { cut: 7 }, layers }));
    expect(find(root, '.leaf').classList).toContain('crowd');
    expect(find(show(), '.leaf').className.trim()).toBe('leaf');
  });
});
