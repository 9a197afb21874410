import { afterEach, beforeEach, describe, expect, test, vi } from 'vitest';
import { watchHold } from '../../../../client/elements/layout/watch-hold.ts';

function rest(pointerType: string): {
  readonly cell: HTMLElement;
  readonly held: () => void;
  readonly tapped: () => void;
} {
  const cell = document.createElement('div');
  document.body.replaceChildren(cell);
  const held = vi.fn();
  const tapped = vi.fn();
  document.body.addEventListener('click', tapped, { once: true });
  cell.addEventListener('pointerdown', (event) => watchHold(event, held), { once: true });
  fire(cell, 'pointerdown', { pointerType });
  return { cell, held, tapped };
}

const fire = (cell: HTMLElement, name: string, init: PointerEventInit = {}) =>
  cell.dispatchEvent(new PointerEvent(name, { bubbles: true, clientX: 10, clientY: 10, ...init }));

describe('watchHold', () => {
  beforeEach(() => {
    vi.useFakeTimers();
  });
  afterEach(() => {
    vi.useRealTimers();
    document.body.replaceChildren();
  });

  test('watchHold tells when a finger rests half a second, and swallows the tap that follows', () => {
    const { cell, held, tapped } = rest('touch');
    vi.advanceTimersByTime(499);
    expect(held).not.toHaveBeenCalled();
    vi.advanceTimersByTime(1);
    expect(held).toHaveBeenCalledOnce();
    cell.click();
    expect(tapped).not.toHaveBeenCalled();
    cell.click();
    expect(tapped).toHaveBeenCalledOnce();
  });

  test('watchHold swallows that tap however long the finger rests on, and no tap of another touch', () => {
    const { cell, tapped } = rest('touch');
    vi.advanceTimersByTime(3000);
    fire(cell, 'pointerup', { pointerType: 'touch' });
    cell.click();
    expect(tapped).not.toHaveBeenCalled();
    const other = rest('touch');
    vi.advanceTimersByTime(600);
    fire(other.cell, 'pointerup', { pointerType: 'touch' });
    fire(other.cell, 'pointerdown', { pointerType: 'touch' });
    other.cell.click();
    expect(other.tapped).toHaveBeenCalledOnce();
  });

  test('watchHold takes a short tap for a tap, and a finger that slides for a scroll', () => {
    for (const [name, init] of [
      ['pointerup', {}],
      ['pointercancel', {}],
      ['pointermove', { clientY: 40 }],
    ] as const) {
      const { cell, held, tapped } = rest('touch');
      fire(cell, name, init);
      vi.advanceTimersByTime(1000);
      expect(held).not.toHaveBeenCalled();
      cell.click();
      expect(tapped).toHaveBeenCalledOnce();
    }
  });

  test('watchHold lets a finger tremble, and leaves a mouse alone', () => {
    const { cell, held } = rest('touch');
    fire(cell, 'pointermove', { clientX: 14 });
    vi.advanceTimersByTime(500);
    expect(held).toHaveBeenCalledOnce();
    const mouse = rest('mouse');
    vi.advanceTimersByTime(1000);
    expect(mouse.held).not.toHaveBeenCalled();
  });
});
