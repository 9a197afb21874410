import { createServer, type Server } from 'node:http';
import type { AddressInfo } from 'node:net';
import { afterAll, beforeAll, expect, test } from 'vitest';
import { usePages } from '../support/browser.ts';

const open = usePages();

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

test.each(['plan', 'wash', 'stash', 'kits'])(
  'ragbloom-%s on a foreign origin works on the device where the service fails',
  async (name) => {
    const page = await open('/health', { expected: /ERR_FAILED/ });
    const home = new URL(page.url()).origin;
    html = `<ragbloom-${name} embedded></ragbloom-${name}><script src="${home}/embed/v1.js" async></script>`;
    await page.route('**/v1/**', (route) => route.abort());
    await page.goto(`http://127.0.0.1:${(host.address() as AddressInfo).port}/`);
    await page.locator(`ragbloom-${name} [part="figures"]`).first().waitFor();
    expect(await page.locator(`ragbloom-${name} .notice`).allTextContents()).toContainEqual(
      expect.stringContaining('your device'),
    );
  },
);

test('every script under /embed/ may be loaded by any origin', async () => {
  const page = await open('/');
  await page.locator('ragbloom-plan [part="figures"]').waitFor();
  const loaded = await page.evaluate(() =>
    performance.getEntriesByType('resource').map(({ name }) => name),
  );
  const scripts = loaded.filter((name) => name.includes('/embed/'));
  expect(scripts.length).toBeGreaterThan(2);
  for (const script of scripts) {
    const response = await page.request.get(script);
    expect(response.status()).toBe(200);
    expect(response.headers()['access-control-allow-origin']).toBe('*');
    expect(response.headers()['cross-origin-resource-policy']).toBe('cross-origin');
  }
});
