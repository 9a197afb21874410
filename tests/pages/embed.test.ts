import type { Page } from 'playwright-core';
import { describe, expect, test } from 'vitest';
import { listFiles, readText } from '../structure/source-tree.ts';
import { findViolations } from '../support/axe.ts';
import { usePages, type View } from '../support/browser.ts';

const open = usePages();

async function openMaker(view?: View): Promise<Page> {
  const page = await open('/embed', view);
  await page.getByRole('textbox', { name: 'Script and tag' }).waitFor();
  return page;
}

const snippet = (page: Page, name: string) =>
  page.getByRole('textbox', { name, exact: true }).inputValue();

describe('the page /embed', () => {
  test('shows what was chosen, live and in a sandbox', async () => {
    const page = await openMaker();
    const frame = page.frameLocator('iframe');
    await frame.locator('ragbloom-size [part=figures]').waitFor();
    expect(await page.locator('iframe').getAttribute('sandbox')).toBe('allow-scripts');
    await page.getByRole('radio', { name: /^Yardage/ }).check();
    await frame.locator('ragbloom-yardage [part=figures]').waitFor();
    await expect
      .poll(() => page.locator('iframe').evaluate((one) => one.clientHeight))
      .not.toBe(820);
  });

  test('makes a frame and a script that hold what was typed, locked, and chosen for the look', async () => {
    const page = await openMaker();
    await page.getByRole('textbox', { name: 'Cut of a block', exact: true }).fill('8 1/2');
    await page.getByLabel('Fix: Cut of a block').check();
    await page.getByRole('combobox', { name: 'Language' }).selectOption('Deutsch');
    await page.getByRole('combobox', { name: 'Light or dark' }).selectOption('dark');
    expect(await snippet(page, 'Script and tag')).toContain(
      'preset="target.size=throw&amp;block.cut=8%201%2F2" locked="block.cut" lang="de"',
    );
    const frame =
      /src="([^"]+)"/.exec(await snippet(page, 'Frame'))?.[1]?.replaceAll('&amp;', '&') ?? '';
    await page.goto(frame);
    const element = page.locator('ragbloom-size');
    await element.locator('[part=figures]').waitFor();
    expect(await element.getAttribute('locked')).toBe('block.cut');
    expect(await page.evaluate(() => getComputedStyle(document.documentElement).colorScheme)).toBe(
      'dark',
    );
  });

  test('makes an address that oEmbed knows, and a picture that is one', async () => {
    const page = await openMaker();
    const address = await snippet(page, 'Address');
    const home = new URL(page.url()).origin;
    const embed = await page.request.get(`${home}/oembed?url=${encodeURIComponent(address)}`);
    expect(embed.status()).toBe(200);
    const picture = /<img src="([^"]+)"/
      .exec(await snippet(page, 'Picture'))?.[1]
      ?.replaceAll('&amp;', '&');
    const answer = await page.request.get(picture ?? '');
    expect([answer.status(), answer.headers()['content-type']]).toEqual([200, 'image/svg+xml']);
  });

  test('copies where it may, and selects where it may not', async () => {
    const page = await openMaker();
    await page.context().grantPermissions(['clipboard-read', 'clipboard-write']);
    await page.getByRole('button', { name: 'Copy: Frame' }).click();
    const said = page.getByRole('status').filter({ hasText: /./ });
    await expect.poll(() => said.textContent()).toBe('Copied.');
    expect(await page.evaluate(() => navigator.clipboard.readText())).toBe(
      await snippet(page, 'Frame'),
    );
    await page.evaluate(() => {
      navigator.clipboard.writeText = () => Promise.reject(new Error('denied'));
    });
    await page.getByRole('button', { name: 'Copy: Address' }).click();
    await expect.poll(() => said.textContent()).toContain('It is selected');
    expect(await page.evaluate(() => document.activeElement?.id)).toBe('snippet-address');
  });

  test('can be worked by keys alone', async () => {
    const page = await openMaker();
    await page.getByRole('radio', { name: /^Size/ }).focus();
    await page.keyboard.press('ArrowDown');
    await expect.poll(() => snippet(page, 'Script and tag')).toContain('<ragbloom-yardage');
    let name: string | null | undefined = '';
    for (let presses = 0; presses < 120 && name !== 'Copy: Script and tag'; presses += 1) {
      await page.keyboard.press('Tab');
      name = await page.evaluate(() => document.activeElement?.getAttribute('aria-label'));
    }
    expect(name).toBe('Copy: Script and tag');
    await page.keyboard.press('Enter');
    await expect.poll(() => page.locator('.said').textContent()).not.toBe('');
  });

  test.each([
    [320, false],
    [360, true],
    [1280, false],
  ])('breaks no rule of axe at %d pixels, dark: %s, and is not wider', async (width, dark) => {
    const page = await openMaker({ width, height: 740, dark });
    await page.frameLocator('iframe').locator('[part=figures]').waitFor();
    expect(await page.evaluate(() => document.documentElement.scrollWidth)).toBeLessThanOrEqual(
      width,
    );
    expect(await findViolations(page)).toEqual([]);
    if (width < 400) {
      const targets = await page
        .locator(
          '#maker :is(button, select, input:not([type=radio], [type=checkbox]), label.check)',
        )
        .all();
      for (const target of targets) {
        expect(
          (await target.boundingBox())?.height,
          await target.innerHTML(),
        ).toBeGreaterThanOrEqual(44);
      }
    }
  });

  test('says without scripts how to embed', async () => {
    const page = await open('/embed', { javaScript: false });
    await page.getByRole('link', { name: /^\/embed\/size/ }).click();
    await page.waitForURL('**/embed/size?*');
    expect(await page.getByRole('row', { name: /^Blocks/ }).isVisible()).toBe(true);
  });
});

describe('the way to /embed', () => {
  const pages = listFiles('client/pages/*.html').filter((page) => !page.endsWith('/api.html'));

  test('is in the nav of every page, and marked on its own', () => {
    expect(pages.length).toBeGreaterThanOrEqual(8);
    for (const page of pages) {
      const current = page.endsWith('/embed.html') ? ' aria-current="page"' : '';
      expect(readText(page), page).toMatch(
        new RegExp(`<nav aria-label="Pages">.*<a href="/embed"${current}>On your page</a></nav>`),
      );
    }
  });

  test.each(['/', '/counter', '/embed'])('has room at 320 pixels on %s', async (path) => {
    const page = await open(path, { width: 320, height: 740 });
    const nav = page.getByRole('navigation', { name: 'Pages' });
    const box = await nav.getByRole('link', { name: 'On your page' }).boundingBox();
    expect(box?.height).toBe(44);
    expect((box?.x ?? 0) + (box?.width ?? 0)).toBeLessThanOrEqual(320);
    expect((await nav.boundingBox())?.height, 'two lines').toBe(88);
    expect(await page.evaluate(() => document.documentElement.scrollWidth)).toBe(320);
  });
});
