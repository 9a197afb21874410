const sheets = new Map<string, CSSStyleSheet>();

/**
 * Adds styles to what an element wears, once, when a part of it comes that was not there from the start. A sheet made
 * by script is none of what a strict policy on styles refuses.
 */
export function wearStyles(root: ShadowRoot, styles: string): void {
  const sheet = sheets.get(styles) ?? new CSSStyleSheet();
  if (!sheets.has(styles)) sheet.replaceSync(styles);
  sheets.set(styles, sheet);
  if (root.adoptedStyleSheets.includes(sheet)) return;
  root.adoptedStyleSheets = [...root.adoptedStyleSheets, sheet];
}
