import { escapeText } from '#core/drawing/escape-text.ts';

/**
 * The two links by which a page says where its oEmbed is (https://oembed.com, section 4).
 *
 * @param address whole, of the page that is to be embedded
 * @param title plain text
 * @example
 * writeDiscovery('https://a.test/wash', 'A').includes('href="https://a.test/oembed?url=https%3A%2F%2Fa.test%2Fwash&amp;format=json"') // => true
 */
export function writeDiscovery(address: string, title: string): string {
  const { origin } = new URL(address);
  const at = (format: string) =>
    escapeText(`${origin}/oembed?url=${encodeURIComponent(address)}&format=${format}`);
  const named = escapeText(title);
  return (
    `<link rel="alternate" type="application/json+oembed" href="${at('json')}" title="${named}">` +
    `<link rel="alternate" type="text/xml+oembed" href="${at('xml')}" title="${named}">`
  );
}
