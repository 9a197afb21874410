import type { Page } from 'playwright-core';
import { describe, expect, test } from 'vitest';
import { findViolations } from '../support/axe.ts';
import { usePages, type View } from '../support/browser.ts';
import { measureTargets } from '../support/measure-targets.ts';

const open = usePages();
const PHONE = { width: 360, height: 740 } as const;
const REFUSED = /422|ERR_FAILED/;
const PRINTS = ['Moss', 'Rust', 'Oat', 'Fog', 'Fern', 'Clay']
  .map((name, at) => `prints.${at}.id=${name}`)
  .join('&');
const LARGE = `/layout?columns=40&rows=40&${PRINTS}`;

async function openLayout(path = '/layout', view?: View): Promise<Page> {
  const page = await open(path, view);
  await page.locator('[data-place="0"]').waitFor();
  return page;
}

const readCells = (page: Page) =>
  page
    .locator('td[data-place]')
    .evaluateAll((cells) => cells.map(({ textContent }) => textContent).join(''));
const countPages = (pdf: Buffer) => pdf.toString('latin1').match(/\/Type\s*\/Page\b/g)?.length;

describe('what axe finds wrong on the page /layout', () => {
  test.each<[string, string, View]>([
    ['at a desk', '/layout', {}],
    ['at a desk in the dark', '/layout', { dark: true }],
    ['on a phone', '/layout', PHONE],
    [
      'on a phone in the dark, the grid wider than it',
      `/layout?columns=14&rows=9&${PRINTS}`,
      { ...PHONE, dark: true },
    ],
    ['in forced colours', '/layout', { ...PHONE, forcedColors: true }],
    [
      'of a grid that cannot be had',
      `/layout?columns=41&rows=3&${PRINTS}&fixed.0=Q`,
      { expected: REFUSED },
    ],
  ])('is nothing %s', async (_case, path, view) => {
    const page = await openLayout(path, view);
    await page.locator('[data-place="0"]').click();
    await page.locator('summary').click();
    expect(await findViolations(page)).toEqual([]);
  });
});

describe('the page /layout', () => {
  test('fits 320 pixels, whatever the grid: only the grid slides', async () => {
    const page = await openLayout(`/layout?columns=20&rows=4&${PRINTS}`, {
      width: 320,
      height: 600,
    });
    expect(await page.evaluate(() => document.documentElement.scrollWidth)).toBe(320);
    expect(await page.getByText('The grid is wider than the page').isVisible()).toBe(true);
  });

  test('has targets of 44 pixels on a phone, blocks among them', async () => {
    for (const columns of [6, 20]) {
      const page = await openLayout(`/layout?columns=${columns}&rows=5&${PRINTS}`, PHONE);
      const small = (await measureTargets(page)).filter(
        ({ width, height }) => Math.min(width, height) < 43.99,
      );
      expect(small, `${columns} columns`).toEqual([]);
    }
  });

  test('a link is the very grid that a hand laid, and the back button goes before it', async () => {
    const page = await openLayout(`/layout?columns=5&rows=5&${PRINTS}`);
    const before = await readCells(page);
    await page.locator('[data-place="1"]').click();
    await page.locator('[data-place="13"]').click();
    const after = await readCells(page);
    expect([after[1], after[13]]).toEqual([before[13], before[1]]);
    const again = await openLayout(page.url());
    expect(await readCells(again)).toBe(after);
  });

  test('lays on without a network', async () => {
    const page = await open('/health', { expected: REFUSED });
    await page.route('**/v1/**', (route) => route.abort());
    await page.goto(new URL('/layout', page.url()).href);
    await page.locator('[data-place="0"]').waitFor();
    const before = await readCells(page);
    await page.getByRole('button', { name: 'Another arrangement' }).click();
    await expect.poll(() => readCells(page)).not.toBe(before);
  });

  test('without scripts it says the layout in words', async () => {
    const page = await open('/layout', { javaScript: false });
    expect(await page.getByRole('heading', { name: /^Layout of 5 by 6 blocks/ }).isVisible()).toBe(
      true,
    );
  });

  // The processor is slowed to a quarter: the figure is printed and never a gate by the clock.
  test('tells in one step of script what an edit of forty by forty makes touch', async () => {
    const page = await openLayout(LARGE);
    const session = await page.context().newCDPSession(page);
    await session.send('Emulation.setCPUThrottlingRate', { rate: 4 });
    const edits = await page.evaluate(async () => {
      const element = document.querySelector('ragbloom-layout') as HTMLElement & {
        readonly updateComplete: Promise<boolean>;
      };
      const root = element.shadowRoot as ShadowRoot;
      const read = () => root.querySelector('[part=figures]')?.textContent;
      const tap = (place: number) =>
        root.querySelector<HTMLElement>(`[data-place="${place}"]`)?.click();
      const made: { time: number; isTold: boolean }[] = [];
      for (let edit = 0; edit < 12; edit += 1) {
        tap(41 * edit);
        await element.updateComplete;
        await new Promise((done) => requestAnimationFrame(done));
        const before = read();
        const start = performance.now();
        tap(41 * edit + 803);
        await element.updateComplete;
        made.push({ time: performance.now() - start, isTold: read() !== before });
      }
      return made;
    });
    const times = edits.map(({ time }) => time).sort((one, other) => one - other);
    console.log(
      `an edit of 40 × 40, slowed to a quarter: ${times[6]?.toFixed(1)} ms in the median`,
    );
    expect(edits.some(({ isTold }) => isTold)).toBe(true);
  });
});

describe('the floor sheet', () => {
  test.each([
    ['Letter', 9, 11, 1],
    ['A4', 9, 11, 1],
    ['Letter', 20, 20, 1],
    ['A4', 20, 20, 1],
    ['Letter', 21, 20, 2],
    ['A4', 40, 40, 4],
    ['Letter', 40, 40, 4],
  ] as const)('on %s a quilt of %d by %d takes %d pages', async (format, columns, rows, pages) => {
    const page = await openLayout(`/layout?columns=${columns}&rows=${rows}&${PRINTS}`);
    expect(countPages(await page.pdf({ format }))).toBe(pages);
  });

  test('names rows, columns and the top left, shows nothing else, and reads without colour', async () => {
    const page = await openLayout(`/layout?columns=30&rows=24&${PRINTS}`);
    await page.emulateMedia({ media: 'print' });
    const sheet = page.locator('.floor section').first();
    await sheet.waitFor();
    expect(
      await page
        .locator('.board, nav, footer')
        .evaluateAll((all) => all.some((one) => one.checkVisibility())),
    ).toBe(false);
    const texts = await sheet.locator('text').allTextContents();
    expect(texts).toEqual(expect.arrayContaining(['1', '15', 'A', 'L']));
    expect(await sheet.getByText('Top left').isVisible()).toBe(true);
    const letter = sheet.locator('svg.sheet text.letter').first();
    expect(await letter.getAttribute('fill')).toBe('#1b2233');
    const ground = sheet.locator('svg.sheet path.face').first();
    expect(await ground.evaluate((path) => Number(getComputedStyle(path).opacity))).toBeLessThan(
      0.5,
    );
    expect(await page.locator('.floor .map .here').allTextContents()).toEqual(['A', 'B', 'C', 'D']);
  });
});
