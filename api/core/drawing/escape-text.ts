const ESCAPES: Readonly<Record<string, string>> = {
  '&': '&amp;',
  '<': '&lt;',
  '>': '&gt;',
  '"': '&quot;',
  "'": '&#39;',
};

/**
 * Text as it may stand in HTML, XML and SVG, between tags and in quoted attributes alike.
 *
 * @example
 * escapeText('A < "B"') // => 'A &lt; &quot;B&quot;'
 */
export function escapeText(text: string): string {
  return text.replace(/[&<>"']/g, (sign) => ESCAPES[sign] ?? '');
}
