import { escapeText } from '#core/drawing/escape-text.ts';

/** What no document of XML 1.0 may hold (section 2.2), escaped or not; line ends do not come in here. */
const FORBIDDEN = /[\p{Cc}\p{Cs}\uFFFE\uFFFF]/gu;

/**
 * An answer of oEmbed as XML (https://oembed.com, section 2.3.4.2).
 *
 * @param fields in their order; names are the standard's
 * @example
 * writeOembedXml({ width: 1, title: 'a<b' }) // => '<?xml version="1.0" encoding="utf-8" standalone="yes"?>\n<oembed><width>1</width><title>a&lt;b</title></oembed>\n'
 */
export function writeOembedXml(fields: Readonly<Record<string, string | number>>): string {
  const parts = Object.entries(fields).map(([name, value]) => {
    return `<${name}>${escapeText(`${value}`.replace(FORBIDDEN, '�'))}</${name}>`;
  });
  return `<?xml version="1.0" encoding="utf-8" standalone="yes"?>\n<oembed>${parts.join('')}</oembed>\n`;
}
