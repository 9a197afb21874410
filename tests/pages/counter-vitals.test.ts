import type { BrowserContext, Page } from 'playwright-core';
import { afterAll, afterEach, beforeAll, describe, expect, test } from 'vitest';
import { launchBrowser } from '../support/browser.ts';
import { AISLE, measureVisit, type Visit } from '../support/measure-visit.ts';
import { type Compressing, serveCompressed } from '../support/serve-compressed.ts';
import { useWorker } from '../support/worker.ts';

const worker = useWorker();
const PLAN = '/counter?target.width=40&target.height=50';
let browser: Awaited<ReturnType<typeof launchBrowser>>;
let site: Compressing;
const contexts: BrowserContext[] = [];

beforeAll(async () => {
  browser = await launchBrowser();
  site = await serveCompressed(worker.origin());
}, 60_000);
afterEach(() => Promise.all(contexts.splice(0).map((context) => context.close())));
afterAll(async () => {
  await browser.close();
  await site.stop();
});

async function takePhone(serviceWorkers: 'allow' | 'block'): Promise<BrowserContext> {
  const viewport = { width: 360, height: 740 };
  const context = await browser.newContext({ viewport, serviceWorkers });
  contexts.push(context);
  return context;
}

/** Milliseconds from the start of the visit until the answer is there. */
async function timeAnswer(page: Page, path = PLAN): Promise<number> {
  await page.goto(site.origin + path, { waitUntil: 'commit' });
  return page.evaluate(
    () =>
      new Promise<number>((done) => {
        const look = () => {
          const root = document.querySelector('ragbloom-counter')?.shadowRoot;
          if (root?.querySelector('.amount')) done(performance.now());
          else requestAnimationFrame(look);
        };
        look();
      }),
  );
}

/** What a slow processor makes of times on a machine that others use too. */
const SLACK = 3;

describe('the counter in a store aisle: 400 kbit/s, 400 ms, a processor four times slower', () => {
  test('the first answer takes 45 kB at most, shifts nothing, and is there in about 3 s', async () => {
    const page = await (await takePhone('block')).newPage();
    const measuring = await measureVisit(page, AISLE);
    const time = await timeAnswer(page);
    await page.waitForLoadState('networkidle');
    const { bytes, wire, cls, requests } = await measuring.read();
    console.log(
      `cold: ${Math.round(time)} ms, ${bytes} bytes, ${wire} with headers, in ${requests} answers`,
    );
    expect(bytes).toBeLessThanOrEqual(45_000);
    expect(cls).toBeLessThanOrEqual(0.02);
    expect(time).toBeLessThan(3000 * SLACK);
  });

  test.each([
    ['with a signal', false],
    ['without one', true],
  ])('the next visit, %s, takes about half a second', async (_name, isOffline) => {
    const phone = await takePhone('allow');
    const first = await phone.newPage();
    await first.goto(site.origin + PLAN);
    await first.getByText('Kept on this device').waitFor();
    await first.close();
    await phone.setOffline(isOffline);
    const page = await phone.newPage();
    const measuring = await measureVisit(page, isOffline ? { ...AISLE, rate: 0 } : AISLE);
    const time = await timeAnswer(page);
    const { cls } = await measuring.read();
    console.log(`warm, ${isOffline ? 'offline' : 'online'}: ${Math.round(time)} ms`);
    expect(cls).toBeLessThanOrEqual(0.02);
    expect(time).toBeLessThan(500 * SLACK);
  });

  test('a press is answered in about 100 ms, and what changes does not shift', async () => {
    const page = await (await takePhone('block')).newPage();
    const measuring = await measureVisit(page, AISLE);
    await timeAnswer(page);
    await page.waitForLoadState('networkidle');
    await measuring.forget();
    await page.locator('.widths label').last().click();
    await page.locator('#price').pressSequentially('12.99');
    await page.locator('.bar .tick').click();
    for (const mode of [2, 3, 4, 1]) await page.locator(`.modes label:nth-child(${mode})`).click();
    await page.getByLabel('The next cloth').click();
    const { interaction, cls }: Visit = await measuring.read();
    console.log(`press: ${interaction} ms, shift ${cls.toFixed(4)}`);
    expect(cls).toBeLessThanOrEqual(0.02);
    expect(interaction).toBeLessThan(100 * SLACK);
  });
});
