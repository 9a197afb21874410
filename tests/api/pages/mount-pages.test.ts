import { Hono } from 'hono';
import { describe, expect, test } from 'vitest';
import { app, ENDPOINTS } from '../../../api/app.ts';
import { RATE_LIMIT_POLICY, type Surroundings } from '../../../api/http/limit-rate.ts';
import { MARKERS, mountPages } from '../../../api/pages/mount-pages.ts';
import { listFiles, readText } from '../../structure/source-tree.ts';

const FILE = `<head><title>T</title>${MARKERS.head}</head><ragbloom-plan>${MARKERS.result}</ragbloom-plan>`;
const ASSETS = {
  fetch: async ({ url }: Request) =>
    new URL(url).search === '' && !url.endsWith('/layout')
      ? new Response(FILE, { headers: { 'Content-Security-Policy': 'strict', ETag: '"file"' } })
      : new Response(null, { status: 404 }),
};
const ask = (path: string, init?: RequestInit, more = {}) =>
  app.request(`http://ours.test${path}`, init, { ASSETS, ...more });

describe('whole pages without scripts', () => {
  test('have the result of their address inside the element, and the links to embed it in the head', async () => {
    const answer = await ask('/?target.height=50&target.width=40');
    expect(answer.status).toBe(200);
    expect(answer.headers.get('content-security-policy')).toBe('strict');
    const html = await answer.text();
    expect(html).toMatch(
      /<ragbloom-plan><div class="told".*20: 4 across, 5 down.*<\/div><\/ragbloom-plan>/,
    );
    expect(html).toContain(
      encodeURIComponent('http://ours.test/?target.width=40&target.height=50'),
    );
    expect(html.match(/<\/title><link.*\+oembed.*<link.*\+oembed.*<\/head>/)).not.toBeNull();
    expect(html).toContain('<noscript><form class="ask" method="get" action="/">');
  });
  test('have an example for those without scripts alone where nothing is asked', async () => {
    const html = await (await ask('/')).text();
    expect(html).toMatch(
      /<ragbloom-plan><noscript><div class="told".*<\/noscript><\/ragbloom-plan>/,
    );
    expect(html.match(/<noscript>/g)?.length).toBe(1);
  });
  test('say what is wrong in words, with a field to mend it, and are kept by nobody then', async () => {
    const answer = await ask('/?target.width=x&target.height=50');
    expect([answer.status, answer.headers.get('cache-control')]).toEqual([422, 'no-store']);
    const html = await answer.text();
    expect(html).toContain('which is no length');
    expect(html).toContain('<input name="target.width" value="x"');
    expect(html).not.toContain('+oembed');
  });
  test('pass over what other sites append', async () => {
    const answer = await ask('/wash?utmsource=mail&_ga=1');
    expect(answer.status).toBe(200);
  });
  test('have the example for those without scripts alone where only that was appended', async () => {
    expect(await (await ask('/?utm_source=x')).text()).toBe(await (await ask('/')).text());
  });
  test('have a tag of their own, not that of the file', async () => {
    const [one, other] = await Promise.all([ask('/?target.size=lap'), ask('/?target.size=cot')]);
    const tag = one.headers.get('etag') ?? '';
    expect(tag).not.toBe('"file"');
    expect(tag).not.toBe(other.headers.get('etag'));
    expect((await ask('/?target.size=lap', { headers: { 'If-None-Match': tag } })).status).toBe(
      304,
    );
  });
  test('are served bare to one who asks too much, and the bare page counts for nothing', async () => {
    const RATE_LIMIT = { limit: async () => ({ success: false }) };
    const answer = await ask('/?target.size=lap', {}, { RATE_LIMIT });
    expect([answer.status, await answer.text()]).toEqual([200, FILE]);
    expect(answer.headers.get('cache-control')).toBe('no-store');
    expect(await (await ask('/', {}, { RATE_LIMIT })).text()).toContain('<noscript>');
  });
  test('count by whatever stands behind the question mark, and tell the policy then', async () => {
    const keys: string[] = [];
    const RATE_LIMIT = { limit: async () => ({ success: keys.push('') < 9 }) };
    const count = async (path: string) => {
      const before = keys.length;
      const { headers } = await ask(path, {}, { RATE_LIMIT });
      return [keys.length - before, headers.get('ratelimit-policy')];
    };
    expect(await count('/')).toEqual([0, null]);
    for (const path of ['/?_=1', '/?a=', '/?target.size=lap', '/?target.width=x'])
      expect(await count(path), path).toEqual([1, RATE_LIMIT_POLICY]);
  });
  test('reckon their example once', async () => {
    const asked: string[] = [];
    const spied = ENDPOINTS.map(({ path, understandQuery }) => ({
      path,
      understandQuery: (query: string) => {
        asked.push(query);
        return understandQuery(query);
      },
    }));
    const pages = new Hono<Surroundings>();
    mountPages(pages, spied);
    for (const path of ['/', '/?_=1', '/?_=2', '/?a=', '/'])
      expect((await pages.request(`http://ours.test${path}`, {}, { ASSETS })).status).toBe(200);
    expect(asked.length).toBe(1);
  });
  test('are not there where there is no file, and take no other method', async () => {
    expect((await ask('/layout')).status).toBe(404);
    expect((await app.request('http://ours.test/wash')).status).toBe(404);
    expect((await ask('/', { method: 'POST' })).status).toBe(405);
  });
  test('let no markup of an address through, nor what a replacement might read into it', async () => {
    const bad = encodeURIComponent(`"><script>alert(1)</script>$&$'`);
    const html = await (await ask(`/?target.width=${bad}&target.height=50`)).text();
    expect(html).not.toContain('<script');
    expect(html).toContain('$&amp;$&#39;');
  });
});

describe('MARKERS', () => {
  test('stand once in every page that has an element to share', () => {
    const pages = listFiles('client/pages/{index,wash,stash,kits,layout}.html');
    expect(pages.length).toBeGreaterThanOrEqual(4);
    for (const page of pages) {
      const text = readText(page);
      for (const marker of Object.values(MARKERS)) expect(text.split(marker).length, page).toBe(2);
      expect(text.indexOf(MARKERS.head)).toBeLessThan(text.indexOf('</head>'));
      expect(text).toMatch(new RegExp(`<ragbloom-[a-z]+[^>]*>${MARKERS.result}</ragbloom-`));
    }
  });
});
