import { describe, expect, test } from 'vitest';
import { usePages } from '../support/browser.ts';

const open = usePages();

/** Reads XML as a browser does, an error being an element of its own. */
const readXml = (text: string) => {
  const read = new DOMParser().parseFromString(text, 'text/xml');
  const fields = [...(read.documentElement?.children ?? [])].map((one) => [
    one.localName,
    one.textContent,
  ]);
  return { root: read.documentElement?.localName, fields };
};

describe('/oembed as XML', () => {
  test.each([
    '/?target.width=40&target.height=50',
    '/wash',
    '/embed/yardage?fabrics.0.id=%3C%26%22%5D%5D%3E%27&fabrics.0.width=42&fabrics.0.pieces.0.id=%C2%BD%F0%9F%A7%B5&fabrics.0.pieces.0.width=8&fabrics.0.pieces.0.length=8&fabrics.0.pieces.0.count=4',
  ])('says in a real parser what it says as JSON: %.40s', async (path) => {
    const page = await open('/health');
    const home = new URL(page.url()).origin;
    const at = `${home}/oembed?url=${encodeURIComponent(home + path)}`;
    const json = (await (await page.request.get(`${at}&format=json`)).json()) as object;
    const answer = await page.request.get(`${at}&format=xml`);
    expect(answer.headers()['content-type']).toBe('text/xml; charset=utf-8');
    const { root, fields } = await page.evaluate(readXml, await answer.text());
    expect(root).toBe('oembed');
    expect(fields).toEqual(Object.entries(json).map(([name, value]) => [name, `${value}`]));
  });
});

describe('discovery', () => {
  test.each([
    '/',
    '/?target.size=lap',
    '/wash',
    '/layout',
    '/stash',
    '/kits',
    '/embed/size?_lang=de',
  ])('%s links what describes it, in its head and early', async (path) => {
    const page = await open('/health');
    const home = new URL(page.url()).origin;
    const html = await (await page.request.get(home + path)).text();
    expect(html.indexOf('+oembed')).toBeLessThan(150_000);
    const links = await page.evaluate((text) => {
      const { head } = new DOMParser().parseFromString(text, 'text/html');
      return [...head.querySelectorAll<HTMLLinkElement>('link[type$="+oembed"]')].map(
        ({ type, title, href }) => ({ type, title, href }),
      );
    }, html);
    expect(links.map(({ type }) => type)).toEqual(['application/json+oembed', 'text/xml+oembed']);
    for (const { href, title } of links) {
      const answer = await page.request.get(href);
      expect(answer.status(), href).toBe(200);
      expect(title.length).toBeGreaterThan(0);
    }
    const { title } = (await (await page.request.get(links[0]?.href ?? '')).json()) as {
      title: string;
    };
    expect(title).toBe(links[0]?.title);
  });
});
