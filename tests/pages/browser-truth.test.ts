import { once } from 'node:events';
import { createServer, type Server } from 'node:http';
import { afterAll, beforeAll, expect, test } from 'vitest';
import { findViolations } from '../support/axe.ts';
import { usePages } from '../support/browser.ts';

// The browser must be able to refuse: with web security switched off, all that follows would pass falsely.
const open = usePages();
let foreign: Server;
let foreignOrigin = '';

beforeAll(async () => {
  foreign = createServer((request, response) => {
    response.setHeader('content-type', 'text/html; charset=utf-8');
    if (request.url === '/shared') response.setHeader('access-control-allow-origin', '*');
    response.end('<!doctype html><html lang="en"><title>Foreign</title><main><img src="data:,">');
  }).listen(0, '127.0.0.1');
  await once(foreign, 'listening');
  foreignOrigin = `http://127.0.0.1:${(foreign.address() as { port: number }).port}`;
});
afterAll(() => foreign.close());

test('a page reads a foreign answer only where that answer allows it', async () => {
  const page = await open(foreignOrigin.replace('127.0.0.1', 'localhost'), {
    expected: /CORS policy|ERR_FAILED/,
  });
  const read = (path: string) =>
    page.evaluate(
      (url) =>
        fetch(url)
          .then(({ status }) => status)
          .catch(() => 'refused'),
      path,
    );
  expect(await read(`${foreignOrigin}/shared`)).toBe(200);
  expect(await read(`${foreignOrigin}/private`)).toBe('refused');
});

test('a page of ours runs no inline script and applies no inline style', async () => {
  const page = await open('/', { expected: /Content Security Policy|TrustedScript/ });
  const ran = await page.evaluate(() => {
    const script = document.createElement('script');
    const style = document.createElement('p');
    style.setAttribute('style', 'color: rgb(1, 2, 3)');
    try {
      script.text = 'document.title = "inline"';
    } catch {
      // Trusted Types may refuse the text before the policy refuses the script.
    }
    document.body.append(script, style);
    return { title: document.title, color: getComputedStyle(style).color };
  });
  expect(ran.title).toBe('Plan a rag quilt – Ragbloom');
  expect(ran.color).not.toBe('rgb(1, 2, 3)');
});

test('findViolations names an image that has no alternative text', async () => {
  const page = await open(foreignOrigin);
  expect((await findViolations(page)).join('\n')).toContain('image-alt at img');
});
