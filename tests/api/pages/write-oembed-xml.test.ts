import { describe, expect, test } from 'vitest';
import { writeOembedXml } from '../../../api/pages/write-oembed-xml.ts';

describe('writeOembedXml', () => {
  test('writes each field once, in order and escaped', () => {
    expect(writeOembedXml({ version: '1.0', html: '<iframe src="a?b&c">', width: 3 })).toBe(
      '<?xml version="1.0" encoding="utf-8" standalone="yes"?>\n' +
        '<oembed><version>1.0</version><html>&lt;iframe src=&quot;a?b&amp;c&quot;&gt;</html><width>3</width></oembed>\n',
    );
  });
  test('lets nothing through that XML 1.0 forbids', () => {
    const text = writeOembedXml({ title: 'a\u0000b\u001bc\uFFFEd\uD800e' });
    expect(text).toContain('<title>a�b�c�d�e</title>');
  });
});
