/** Marks the element that is printed, for as long as that takes. */
const MARK = 'data-ragbloom-printing';

/** All that holds the element is laid plain, so that it begins at the head of the page; all else is left out. */
const ALONE = `@media print{
:has([${MARK}]){display:block!important;position:static!important;float:none!important;transform:none!important;
margin:0!important;padding:0!important;border:0!important;width:auto!important;max-width:none!important;
height:auto!important;min-height:0!important;overflow:visible!important}
body,body :has([${MARK}]){background:none!important}
body *:not([${MARK}]):not(:has([${MARK}])){display:none!important}
[${MARK}]{display:block!important;margin:0!important}
}
@page{margin:12mm}`;

/**
 * Prints one element without the page around it, whosever page that is, and leaves the page as it was.
 *
 * @param done called when printing is over.
 */
export function printAlone(element: Element, done: () => void): void {
  const { ownerDocument: page } = element;
  const sheet = new CSSStyleSheet();
  sheet.replaceSync(ALONE);
  page.adoptedStyleSheets = [...page.adoptedStyleSheets, sheet];
  element.toggleAttribute(MARK, true);
  const end = () => {
    page.adoptedStyleSheets = page.adoptedStyleSheets.filter((one) => one !== sheet);
    element.toggleAttribute(MARK, false);
    done();
  };
  globalThis.addEventListener('afterprint', end, { once: true });
  globalThis.print();
}
