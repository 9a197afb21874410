import { createServer, type Server } from 'node:http';
import type { AddressInfo } from 'node:net';
import { afterAll, beforeAll, expect, test } from 'vitest';
import { readDocument } from '../structure/read-document.ts';
import { readText } from '../structure/source-tree.ts';
import { usePages } from '../support/browser.ts';

const open = usePages();
const [snippet, kit] = readDocument(readText('README.md')).fences.filter(
  ({ language }) => language === 'html',
);

/** A page of somebody else, on an origin of its own. */
let host: Server;
let html = '';
beforeAll(async () => {
  host = createServer((_request, response) => {
    response.setHeader('Content-Type', 'text/html; charset=utf-8');
    response.end(`<!doctype html><html lang="en"><title>A shop</title><body>${html}</body></html>`);
  });
  await new Promise<void>((done) => host.listen(0, '127.0.0.1', done));
});
afterAll(() => host.close());

function hostPage(): string {
  return `http://127.0.0.1:${(host.address() as AddressInfo).port}/`;
}

test('the tags of README.md show a plan in a page of somebody else', async () => {
  const home = new URL((await open('/health')).url()).origin;
  html = snippet?.text.replaceAll('http://localhost:8787', home) ?? '';
  const page = await open(hostPage());
  const figures = page.locator('ragbloom-plan [part="figures"]');
  await figures.waitFor();
  expect(await figures.textContent()).toMatch(/\d\s*cm/);
  expect(await page.getByRole('link', { name: 'The plan for this quilt' }).isVisible()).toBe(false);
  expect(page.url()).toBe(hostPage());
});

test('the tags of README.md show their link where there is no script', async () => {
  html = snippet?.text ?? '';
  const page = await open(hostPage(), { javaScript: false });
  expect(await page.getByRole('link', { name: 'The plan for this quilt' }).isVisible()).toBe(true);
});

test('the form of README.md sends the plan of the kit that a customer sized', async () => {
  const home = new URL((await open('/health')).url()).origin;
  html = `${snippet?.text}${kit?.text}`.replaceAll('http://localhost:8787', home);
  const page = await open(hostPage());
  const width = page.locator('ragbloom-size').getByRole('textbox', { name: /^Width/ });
  await width.fill('40');
  const sent = () =>
    page.evaluate(() => {
      const form = document.querySelector('form');
      return form && String(new FormData(form).get('plan'));
    });
  await expect.poll(sent).toBe('target.width=40&target.height=60&block.cut=10');
  expect(await page.getByRole('button', { name: 'Put the kit into the cart' }).isVisible()).toBe(
    true,
  );
});
