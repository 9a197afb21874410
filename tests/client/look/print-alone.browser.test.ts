import { afterEach, describe, expect, test, vi } from 'vitest';
import { printAlone } from '../../../client/look/print-alone.ts';

afterEach(() => vi.restoreAllMocks());

describe('printAlone', () => {
  test('printAlone prints one element, and leaves the page as it was', () => {
    const element = document.createElement('section');
    document.body.replaceChildren(element);
    const sheets = document.adoptedStyleSheets.length;
    const done = vi.fn();
    const print = vi.spyOn(globalThis, 'print').mockImplementation(() => {
      expect(document.adoptedStyleSheets).toHaveLength(sheets + 1);
      expect(element.hasAttribute('data-ragbloom-printing')).toBe(true);
    });
    printAlone(element, done);
    expect(print).toHaveBeenCalledOnce();
    expect(done).not.toHaveBeenCalled();
    globalThis.dispatchEvent(new Event('afterprint'));
    expect(done).toHaveBeenCalledOnce();
    expect(document.adoptedStyleSheets).toHaveLength(sheets);
    expect(element.outerHTML).toBe('<section></section>');
  });

  test('printAlone tells of the end once, however often the page is printed later', () => {
    vi.spyOn(globalThis, 'print').mockImplementation(() => {});
    const done = vi.fn();
    printAlone(document.body.appendChild(document.createElement('p')), done);
    globalThis.dispatchEvent(new Event('afterprint'));
    globalThis.dispatchEvent(new Event('afterprint'));
    expect(done).toHaveBeenCalledOnce();
  });
});
