import { describe, expect, test } from 'vitest';
import { sendPage } from '../../../api/pages/send-page.ts';

const headers = { 'Content-Type': 'text/html', 'Cache-Control': 'public, max-age=60' };
const ask = (tag?: string) =>
  new Request('http://a.test/', tag === undefined ? {} : { headers: { 'If-None-Match': tag } });

describe('sendPage', () => {
  test('tags the bytes, and answers 304 to who holds them', async () => {
    const page = await sendPage(ask(), '<p>a', { status: 200, headers });
    const tag = page.headers.get('etag') ?? '';
    expect(tag).toMatch(/^"[0-9a-f]{32}"$/);
    const held = await sendPage(ask(tag), '<p>a', { status: 200, headers });
    expect([held.status, await held.text(), held.headers.get('etag')]).toEqual([304, '', tag]);
    const other = await sendPage(ask(tag), '<p>b', { status: 200, headers });
    expect([other.status, await other.text()]).toEqual([200, '<p>b']);
  });
  test('has what tells of a fault kept by nobody', async () => {
    const page = await sendPage(ask('*'), '<p>a', { status: 422, headers });
    expect([page.status, page.headers.get('cache-control')]).toEqual([422, 'no-store']);
    expect(page.headers.has('etag')).toBe(false);
  });
});
