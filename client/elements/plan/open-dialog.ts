import { wearStyles } from '../../look/wear-styles.ts';

/**
 * Opens a dialog as soon as it is on the page, dressed in styles of its own. The browser keeps the keyboard inside,
 * closes it on Escape and gives the focus back to where it was.
 *
 * @param element nothing once it is gone.
 */
export function openDialog(element: Element | undefined, styles: string): void {
  if (!(element instanceof HTMLDialogElement)) return;
  // A template is told of its element just before that stands on the page.
  queueMicrotask(() => {
    const root = element.getRootNode();
    if (!element.isConnected || element.open) return;
    if (root instanceof ShadowRoot) wearStyles(root, styles);
    element.showModal();
  });
}
