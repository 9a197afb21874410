import type { Page } from 'playwright-core';

/** One thing to press, and how large it is in CSS pixels. */
export interface Target {
  readonly name: string;
  readonly width: number;
  readonly height: number;
}

/**
 * Everything on a page that can be pressed, open shadow roots included. A control within a label is as large as that
 * label; a link within a sentence is left out, as the guideline has it (WCAG 2.2, 2.5.8).
 */
export function measureTargets(page: Page): Promise<readonly Target[]> {
  return page.evaluate(() => {
    const found: Target[] = [];
    const isInSentence = (element: Element) =>
      element.localName === 'a' &&
      /\S/.test(element.parentElement?.textContent ?? '') &&
      element.closest('p,li')?.textContent?.trim() !== element.textContent?.trim();
    const look = (root: Document | ShadowRoot) => {
      for (const element of root.querySelectorAll('*')) {
        if (element.shadowRoot !== null) look(element.shadowRoot);
        if (!element.matches('a[href],button,input,select,summary,textarea,[tabindex]')) continue;
        if (!element.checkVisibility({ checkVisibilityCSS: true }) || isInSentence(element))
          continue;
        const box = (element.closest('label') ?? element).getBoundingClientRect();
        if (box.width === 0 || box.height === 0) continue;
        const name = `${element.localName} ${(element.getAttribute('aria-label') ?? element.closest('label')?.textContent ?? element.textContent ?? '').trim().replace(/\s+/g, ' ').slice(0, 30)}`;
        found.push({ name, width: box.width, height: box.height });
      }
    };
    look(document);
    return found;
  });
}
