/**
 * Every page in one run: what it weighs, how soon it shows, what shifts, how quick it answers a press on a slow phone
 * with a slow network, and whether those can use it who see, hear or point otherwise. Prints a table; `node
 * tests/bench/vitals.ts /wash` measures one page.
 */
import { globSync } from 'node:fs';
import { mkdtemp, rm } from 'node:fs/promises';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { fileURLToPath } from 'node:url';
import { type Browser, chromium, type Page } from 'playwright-core';
import { startServer } from '../../api/start.ts';
import { buildSite } from '../../client/build.ts';
import { pathOf } from '../../client/offline/bundle-offline.ts';
import { findViolations } from '../support/axe.ts';
import { prepareChromium } from '../support/chromium.ts';
import { measureTargets } from '../support/measure-targets.ts';
import { measureVisit, SLOW_4G } from '../support/measure-visit.ts';
import { serveCompressed } from '../support/serve-compressed.ts';

const pages = fileURLToPath(new URL('../../client/pages/', import.meta.url));
const PHONE = { width: 360, height: 740 };
const NARROW = { width: 320, height: 568 };

/** Pages that begin with a question show more with one. */
const ASKED: Readonly<Record<string, string>> = {
  '/counter': '/counter?target.width=40&target.height=50',
};

type Row = Readonly<Record<string, string | number>>;

/** Weight, times and shifts, by one slow visit with a few presses. */
async function measureSlow(browser: Browser, address: string): Promise<Row> {
  const context = await browser.newContext({ viewport: PHONE, serviceWorkers: 'block' });
  const page = await context.newPage();
  const measuring = await measureVisit(page, SLOW_4G);
  await page.goto(address);
  await settle(page, 3000);
  const { bytes, wire, requests, lcp, cls } = await measuring.read();
  await measuring.forget();
  await pressAround(page);
  const { interaction, cls: later } = await measuring.read();
  await context.close();
  return {
    kB: (bytes / 1000).toFixed(1),
    'with heads': (wire / 1000).toFixed(1),
    files: requests,
    'LCP ms': Math.round(lcp),
    CLS: cls.toFixed(3),
    'CLS later': later.toFixed(3),
    'press ms': Math.round(interaction),
  };
}

/** Presses and types as a visitor would: the first fields, boxes, buttons and folds that are in sight. */
async function pressAround(page: Page): Promise<void> {
  const fields = page.locator('input[type=text]:visible');
  for (let at = 0; at < Math.min(3, await fields.count()); at += 1) {
    await fields.nth(at).click();
    await page.keyboard.press('End');
    await page.keyboard.type('1');
  }
  const others = page.locator('summary:visible,label.chip:visible,label.check:visible');
  for (let at = 0; at < Math.min(4, await others.count()); at += 1) {
    await others.nth(at).click({ timeout: 3000 });
  }
  await settle(page, 500);
}

/** Whether those can use it who see, hear or point otherwise. */
async function judgeAccess(browser: Browser, address: string): Promise<Row> {
  const faults: string[] = [];
  const see = async (view: object, judge: (page: Page) => Promise<void>) => {
    const context = await browser.newContext({ viewport: PHONE, serviceWorkers: 'block', ...view });
    const page = await context.newPage();
    await page.goto(address);
    await settle(page, 500);
    await judge(page);
    await context.close();
  };
  const count = { axe: 0, small: 0, forced: 0, moving: 0, over: 0 };
  const axe = async (page: Page) => {
    const found = await findViolations(page);
    faults.push(...found);
    return found.length;
  };
  for (const colorScheme of ['light', 'dark']) {
    await see({ colorScheme }, async (page) => {
      count.axe += await axe(page);
      await unfold(page);
      count.axe += await axe(page);
    });
  }
  await see({}, async (page) => {
    await unfold(page);
    const small = (await measureTargets(page)).filter(
      (one) => Math.min(one.width, one.height) < 43.5,
    );
    faults.push(...small.map(({ name, width, height }) => `${name}: ${width} × ${height}`));
    count.small = small.length;
  });
  await see({ forcedColors: 'active' }, async (page) => {
    count.forced = await axe(page);
  });
  await see({ reducedMotion: 'reduce' }, async (page) => {
    count.moving = await page.evaluate(
      () => document.getAnimations().filter(({ playState }) => playState === 'running').length,
    );
  });
  await see({ viewport: NARROW }, async (page) => {
    await unfold(page);
    count.over = await page.evaluate(() => document.documentElement.scrollWidth - innerWidth);
  });
  for (const fault of new Set(faults)) console.error(`  ${fault.replaceAll(/\s+/g, ' ')}`);
  return {
    axe: count.axe,
    '< 44 px': count.small,
    'over at 320': count.over,
    forced: count.forced,
    moving: count.moving,
  };
}

/** Opens what is folded, and what is folded in that; an element may fold one thing where another is opened. */
async function unfold(page: Page): Promise<void> {
  const folded = page.locator('details:not([open]) > summary:visible');
  for (let left = 20; left > 0 && (await folded.count()) > 0; left -= 1) {
    await folded.first().click({ timeout: 3000 });
  }
}

/** Until nothing is asked of the network any more, and a rest. */
async function settle(page: Page, rest: number): Promise<void> {
  await page.waitForLoadState('networkidle');
  await page.waitForTimeout(rest);
}

const build = await mkdtemp(join(tmpdir(), 'ragbloom-vitals-'));
await buildSite(build);
const server = await startServer({ build, port: 0 });
const site = await serveCompressed(server.origin);
const browser = await chromium.launch(await prepareChromium());
try {
  const asked = process.argv.slice(2);
  const paths =
    asked.length > 0 ? asked : globSync('*.html', { cwd: pages }).map(pathOf).toSorted();
  const table: Record<string, Row> = {};
  for (const path of paths) {
    const address = site.origin + (ASKED[path] ?? path);
    console.error(path);
    table[path] = {
      ...(await measureSlow(browser, address)),
      ...(await judgeAccess(browser, address)),
    };
  }
  console.log('Slow 4G (1.6 Mbit/s, 150 ms), processor four times slower, 360 by 740');
  console.table(table);
} finally {
  await browser.close();
  await site.stop();
  await server.stop();
  await rm(build, { recursive: true, force: true });
}
