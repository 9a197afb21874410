import type { BrowserContext, Page } from 'playwright-core';
import { afterAll, afterEach, beforeAll, describe, expect, test } from 'vitest';
import { launchBrowser } from '../support/browser.ts';
import { type Compressing, serveCompressed } from '../support/serve-compressed.ts';
import { useWorker } from '../support/worker.ts';

const worker = useWorker();
const PLAN = '/counter?target.width=40&target.height=50';
let browser: Awaited<ReturnType<typeof launchBrowser>>;
let site: Compressing;
const contexts: BrowserContext[] = [];
const problems: string[] = [];

beforeAll(async () => {
  browser = await launchBrowser();
  site = await serveCompressed(worker.origin());
}, 60_000);
afterEach(async () => {
  await Promise.all(contexts.splice(0).map((context) => context.close()));
  for (const path of ['/service-worker.js', '/counter']) site.change(path);
  expect(problems.splice(0)).toEqual([]);
});
afterAll(async () => {
  await browser.close();
  await site.stop();
});

/** A phone of its own, with what is kept on it. */
async function takePhone(options: { serviceWorkers?: 'allow' | 'block' } = {}) {
  const viewport = { width: 360, height: 740 };
  const context = await browser.newContext({ viewport, ...options });
  contexts.push(context);
  return context;
}

async function open(context: BrowserContext, path: string): Promise<Page> {
  const page = await context.newPage();
  page.on('pageerror', ({ message }) => problems.push(message));
  await page.goto(site.origin + path);
  return page;
}

/** Until the worker has kept the page and answers for it. */
async function waitUntilKept(page: Page): Promise<void> {
  await page.getByText('Kept on this device').waitFor();
  await page.waitForFunction(() => navigator.serviceWorker.controller !== null);
}

const amount = (page: Page) => page.locator('.amount').textContent();

describe('without a signal', () => {
  test('the page starts, asks, searches and draws a code, all from what is kept', async () => {
    const phone = await takePhone();
    await waitUntilKept(await open(phone, '/counter'));
    await phone.setOffline(true);
    const page = await open(phone, `${PLAN}#at=4`);
    expect(await amount(page)).toBe('2⅜ yd');
    await page.getByText('No signal.').waitFor();
    await page.locator('.modes label:nth-child(2)').click();
    await page.locator('#left').fill('2');
    await page.getByText('4 by 6 blocks, cut 10 in').waitFor();
    await page.locator('#left').fill('two');
    await page.getByText('“two” is not a length').waitFor();
    await page.locator('.modes label:nth-child(4)').click();
    await page.getByRole('button', { name: 'Show a code' }).click();
    await page.getByRole('img', { name: 'This list, for another phone' }).waitFor();
  });

  test('a signal that is lost in between loses nothing, and its return is said', async () => {
    const phone = await takePhone();
    const page = await open(phone, PLAN);
    await waitUntilKept(page);
    await page.locator('#price').fill('12.99');
    await phone.setOffline(true);
    await page.locator('.tick').click();
    await page.reload();
    expect(await page.locator('#price').inputValue()).toBe('12.99');
    expect(await page.locator('.tick input').isChecked()).toBe(true);
    await phone.setOffline(false);
    await page.getByText('Kept on this device').waitFor();
  });

  test('a tab that was closed at once comes back with what was typed, by the device alone', async () => {
    const phone = await takePhone();
    const page = await open(phone, PLAN);
    await waitUntilKept(page);
    await page.locator('#width').fill('43 1/2');
    await page.close();
    await phone.setOffline(true);
    const again = await open(phone, '/counter');
    expect(await again.locator('#width').inputValue()).toBe('43 1/2');
  });

  test('another page that was visited opens too, and the service is never answered for', async () => {
    const phone = await takePhone();
    await waitUntilKept(await open(phone, '/counter'));
    const wash = await open(phone, '/wash');
    await wash.locator('ragbloom-wash').waitFor();
    await phone.setOffline(true);
    const again = await open(phone, '/wash');
    expect(await again.getByRole('heading', { level: 1 }).textContent()).toMatch(/wash/i);
    const answer = again.evaluate(() => fetch('/v1/plan?target.size=lap').then(({ ok }) => ok));
    await expect(answer).rejects.toThrow();
  });
});

describe('what a device refuses', () => {
  test('where no worker is allowed the page works as long as there is a signal, and says so', async () => {
    const page = await open(await takePhone({ serviceWorkers: 'block' }), PLAN);
    expect(await amount(page)).toBe('¾ yd');
    await page.locator('.tick').click();
    expect(await page.locator('.sum').textContent()).toContain('1 of 5');
  });

  test('where registering fails, the page says that it is not kept', async () => {
    const phone = await takePhone();
    await phone.addInitScript(() => {
      Object.defineProperty(ServiceWorkerContainer.prototype, 'register', {
        value: () => Promise.reject(new DOMException('No', 'SecurityError')),
      });
    });
    const page = await open(phone, PLAN);
    await page.getByText('This browser keeps no pages').waitFor();
    expect(await amount(page)).toBe('¾ yd');
  });

  test('where storage is refused, what was typed lives in the address', async () => {
    const phone = await takePhone();
    await phone.addInitScript(() => {
      Object.defineProperty(globalThis, 'localStorage', {
        get: () => {
          throw new DOMException('No', 'SecurityError');
        },
      });
    });
    const page = await open(phone, PLAN);
    await page.locator('#price').fill('12.99');
    await page.locator('.tick').click();
    await page.waitForURL(/0\.got=1/);
    await page.reload();
    expect(await page.locator('#price').inputValue()).toBe('12.99');
    expect(await page.locator('.tick input').isChecked()).toBe(true);
  });

  test('in a sandbox without an origin the element still asks for cloth', async () => {
    const page = await open(await takePhone(), '/counter');
    const inside = await page.evaluate(async (query) => {
      const frame = document.createElement('iframe');
      frame.setAttribute('sandbox', 'allow-scripts');
      frame.src = `/counter${query}`;
      document.body.append(frame);
      await new Promise((done) => frame.addEventListener('load', done));
      return frame.src;
    }, '?target.width=40&target.height=50');
    const frame = page.frames().find((one) => one.url() === inside);
    await frame?.locator('.amount').waitFor();
    expect(await frame?.locator('.amount').textContent()).toBe('¾ yd');
    await frame?.locator('.tick').click();
    expect(await frame?.locator('.sum').textContent()).toContain('1 of 5');
  });

  test.each(['1999-01-01', '2199-01-01'])('a clock that says %s changes nothing', async (day) => {
    const phone = await takePhone();
    const page = await phone.newPage();
    await page.clock.setFixedTime(new Date(day));
    await page.goto(site.origin + PLAN);
    await waitUntilKept(page);
    await phone.setOffline(true);
    await page.reload();
    expect(await amount(page)).toBe('¾ yd');
  });
});

describe('a newer version', () => {
  const newer = (text: string) => text.replace(/"[0-9a-f]{8}"/, '"00000000"');

  test('it waits until the page was left; what is typed goes on, and the next visit has it', async () => {
    const phone = await takePhone();
    const page = await open(phone, PLAN);
    await waitUntilKept(page);
    await page.locator('#price').fill('12.99');
    site.change('/service-worker.js', newer);
    site.change('/counter', (text) => text.replace(/(?<=Version [\d.]+, )[0-9a-f]{8}/, '00000000'));
    await page.evaluate(async () => (await navigator.serviceWorker.ready).update());
    await page.getByText('A newer version waits').waitFor();
    await page.reload();
    expect(await page.locator('footer').textContent()).not.toContain('00000000');
    expect(await page.locator('#price').inputValue()).toBe('12.99');
    await page.close();
    const next = await open(phone, '/counter');
    await next.waitForFunction(async () => (await caches.keys()).join() === 'ragbloom-00000000');
    await next.reload();
    expect(await next.locator('footer').textContent()).toContain('00000000');
    expect(await next.locator('#price').inputValue()).toBe('12.99');
  });
});
