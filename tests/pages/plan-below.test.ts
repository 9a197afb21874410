import type { Page } from 'playwright-core';
import { expect, test } from 'vitest';
import { usePages } from '../support/browser.ts';
import { measureVisit, SLOW_4G } from '../support/measure-visit.ts';

const open = usePages();
const BELOW = /\/plan-view-below-\w+\.js/;
const REFUSED = { expected: /ERR_FAILED|ERR_INTERNET/ } as const;

/** Opens the page with what lies below the first screen held back until the test lets it go. */
async function openHeld(width: number, height: number) {
  const page = await open('/health', { width, height });
  const home = new URL('/', page.url()).href;
  const gate = Promise.withResolvers<void>();
  await page.route(BELOW, async (route) => {
    await gate.promise;
    await route.continue();
  });
  const measuring = await measureVisit(page, SLOW_4G);
  await page.goto(home, { waitUntil: 'commit' });
  await page.locator('ragbloom-plan .figures').waitFor();
  return { page, measuring, release: gate.resolve };
}

const tops = (page: Page) =>
  page.evaluate(() => {
    const root = document.querySelector('ragbloom-plan')?.shadowRoot;
    const parts = [...(root?.querySelectorAll('[part=wish],[part=drawing],[part=options]') ?? [])];
    return parts.map((part) => Math.round(part.getBoundingClientRect().top));
  });

test.each([
  [360, 740],
  [1280, 800],
])(
  'the plan shows before what lies below it, which moves nothing at %i px',
  async (width, height) => {
    const { page, measuring, release } = await openHeld(width, height);
    const root = page.locator('ragbloom-plan');
    expect(await root.locator('[part=drawing] .picture').count()).toBe(1);
    expect(await root.locator('[part=work]').count()).toBe(0);
    const before = await tops(page);
    release();
    await root.locator('[part=work]').waitFor();
    expect(before).toHaveLength(3);
    expect(await tops(page)).toEqual(before);
    expect((await measuring.read()).cls).toBeLessThanOrEqual(0.02);
  },
);

test('what lies below is asked for again with the next plan, and by the button', async () => {
  const page = await open('/health', REFUSED);
  const home = new URL('/', page.url()).href;
  let refused = 0;
  await page.route(BELOW, (route) => {
    refused += 1;
    return route.abort();
  });
  await page.goto(home);
  const alert = page.locator('ragbloom-plan [role=alert]');
  await alert.getByText('no connection').waitFor();
  expect(refused).toBeGreaterThan(0);
  await page.unroute(BELOW);
  await alert.getByRole('button').click();
  await page.locator('ragbloom-plan [part=work]').waitFor();
  await expect.poll(() => alert.textContent()).not.toContain('no connection');
});

test('the plan prints what is there while the rest is on its way', async () => {
  const { page, release } = await openHeld(1280, 800);
  await page.emulateMedia({ media: 'print' });
  const root = page.locator('ragbloom-plan');
  expect(await root.locator('.picture').isVisible()).toBe(true);
  expect(await root.locator('.later').isVisible()).toBe(false);
  release();
  await root.locator('[part=shopping]').waitFor();
  expect(await root.locator('[part=shopping] table').isVisible()).toBe(true);
  expect(await root.locator('[part=blocks]').isVisible()).toBe(false);
});
