import { describe, expect, test } from 'vitest';
import { writeDiscovery } from '../../../api/pages/write-discovery.ts';

describe('writeDiscovery', () => {
  // The types are those of https://oembed.com, section 4.
  test('links both formats, with the address encoded once and the title escaped', () => {
    const html = writeDiscovery('https://a.test/?b=1&c=%C2%BD', 'A "<b>"');
    const links = [
      ...html.matchAll(/<link rel="alternate" type="([^"]+)" href="([^"]+)" title="([^"]+)">/g),
    ];
    expect(links.map(([, type]) => type)).toEqual(['application/json+oembed', 'text/xml+oembed']);
    for (const [, , href = '', title] of links) {
      const linked = new URL(href.replaceAll('&amp;', '&'));
      expect(linked.origin + linked.pathname).toBe('https://a.test/oembed');
      expect(linked.searchParams.get('url')).toBe('https://a.test/?b=1&c=%C2%BD');
      expect(title).toBe('A &quot;&lt;b&gt;&quot;');
    }
  });
});
