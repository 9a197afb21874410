import { render } from 'lit';
import { describe, expect, test, vi } from 'vitest';
import { type Fold, foldView } from '../../../client/fields/fold-view.ts';
import { find, renderFresh } from '../../support/render.ts';

const show = (fold: Partial<Fold>) => foldView({ title: 'Seam', body: 'deep', ...fold });

/** Renders folds one after the other into one place and tells whether the last is open. */
function openAfter(...folds: readonly Partial<Fold>[]): HTMLDetailsElement {
  const root = renderFresh('');
  for (const fold of folds) render(show(fold), root);
  return find<HTMLDetailsElement>(root, 'details');
}

describe('foldView', () => {
  test('foldView is folded until something in it is at fault, or it is told to be open', () => {
    expect(openAfter({}).open).toBe(false);
    expect(openAfter({}, { isFaulty: true }).open).toBe(true);
    expect(openAfter({}, { isOpen: true }).open).toBe(true);
  });

  test('foldView stays open when the fault is mended', () => {
    expect(openAfter({ isFaulty: true }, { isFaulty: false }).open).toBe(true);
    expect(openAfter({ isOpen: true }, { isOpen: false }).open).toBe(true);
  });

  test('foldView opens again for a fault after a person folded it', () => {
    const fold = openAfter({ isFaulty: true });
    fold.open = false;
    render(show({ isFaulty: true }), fold.parentElement ?? fold);
    expect(fold.open).toBe(true);
  });

  test('foldView leaves folded what a person folded, though it was open to begin with', () => {
    const fold = openAfter({ isOpen: true });
    fold.open = false;
    render(show({ isOpen: true }), fold.parentElement ?? fold);
    expect(fold.open).toBe(false);
  });

  test('foldView tells when it is opened', async () => {
    const onToggle = vi.fn();
    openAfter({ onToggle }).open = true;
    await expect.poll(() => onToggle.mock.lastCall).toEqual([true]);
  });
});
