import { describe, expect, test } from 'vitest';
import { writeResult } from '../../../api/pages/write-result.ts';

const telling = {
  title: 'A <b>',
  tables: [{ name: 'T & T', rows: [['<i>', '"1"']] as const }],
  steps: ['Cut & sew'],
  cautions: [{ code: 'infant-sleep', severity: 'danger', text: 'No <quilt>.' }] as const,
  image: '/v1/plan.svg?a=1&b=2',
};

describe('writeResult', () => {
  test('tells figures, cautions and the form, and escapes them', () => {
    const html = writeResult({ ok: true, isExample: true, query: '', telling }, '<form></form>');
    expect(html).toBe(
      '<div class="told" lang="en"><link rel="stylesheet" href="/look/told.css"><h2>A &lt;b&gt;</h2>' +
        '<noscript><img src="/v1/plan.svg?a=1&amp;b=2" alt="A &lt;b&gt;"></noscript>' +
        '<table><caption>T &amp; T</caption><tr><th scope="row">&lt;i&gt;</th><td>&quot;1&quot;</td></tr></table>' +
        '<h3>The work</h3><ol><li>Cut &amp; sew</li></ol><h3>Take care</h3><ul><li class="danger">No &lt;quilt&gt;.</li></ul><form></form></div>',
    );
  });
  test('puts no noscript into a noscript, which HTML does not allow', () => {
    expect(writeResult({ ok: true, isExample: true, query: '', telling }, '', true)).not.toContain(
      '<noscript>',
    );
  });
  test('says every fault in words, and keeps the form', () => {
    const faults = [
      { code: 'too-large', path: ['spare'], expected: 100, received: 300 },
      { code: 'unknown-key', path: ['<script>'] },
      { code: 'missing', path: ['target', 'height'] },
    ] as const;
    const html = writeResult({ ok: false, isExample: false, query: '', faults }, '<form></form>');
    expect(html).toContain('<li>spare is 300, which is too large: the most is 100.</li>');
    expect(html).toContain('&lt;script&gt;');
    expect(html).toContain('<li>Height is missing: give it.</li>');
    expect(html).toContain('<form></form>');
  });
});
