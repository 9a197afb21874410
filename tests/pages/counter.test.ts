import type { Page } from 'playwright-core';
import { describe, expect, test } from 'vitest';
import { findViolations } from '../support/axe.ts';
import { usePages } from '../support/browser.ts';
import { measureTargets } from '../support/measure-targets.ts';

const open = usePages();
const PLAN = '/counter?target.width=40&target.height=50';
const phone = { width: 360, height: 740 };

/** What the lower half can be used for, by the place of its chip. */
const MODES = [1, 2, 3, 4] as const;
const turnTo = (page: Page, mode: number) =>
  page.locator(`.modes label:nth-child(${mode})`).click();

describe('the page at the counter', () => {
  test('it says what to ask for, large and as it is spoken, and goes through the cloths', async () => {
    const page = await open(PLAN, phone);
    await page.getByRole('heading', { name: 'Print A' }).waitFor();
    expect(await page.locator('.amount').textContent()).toBe('¾ yd');
    for (let step = 0; step < 4; step += 1) await page.getByLabel('The next cloth').click();
    expect(await page.locator('.spoken').textContent()).toBe('two and three eighths yards');
    const size = await page
      .locator('.amount b')
      .evaluate((figure) => Number.parseFloat(getComputedStyle(figure).fontSize));
    expect(size).toBeGreaterThan(80);
  });

  test('the whole task is in the lower half of a phone, and every target is 44 px at least', async () => {
    const page = await open(`${PLAN}#0.price=12.99`, phone);
    for (const mode of MODES) {
      await turnTo(page, mode);
      if (mode === 2) await page.locator('#left').fill('0.4');
      const small = (await measureTargets(page)).filter(
        ({ width, height }) => Math.min(width, height) < 44,
      );
      expect(small, `in mode ${mode}`).toEqual([]);
    }
    await turnTo(page, 1);
    for (const place of ['.modes', '.widths', '#width', '#price', '.bar']) {
      const box = await page.locator(place).boundingBox();
      expect(box?.y, place).toBeGreaterThanOrEqual(740 / 2 - 8);
      expect((box?.y ?? 0) + (box?.height ?? 0), place).toBeLessThanOrEqual(740);
    }
  });

  test.each([
    ['light', {}],
    ['dark', { dark: true }],
    ['forced colours', { forcedColors: true }],
  ])('in %s axe finds nothing in any state, the start among them', async (_name, view) => {
    const page = await open(`${PLAN}#0.price=12.99`, { ...phone, ...view });
    for (const mode of MODES) {
      await turnTo(page, mode);
      if (mode === 2) await page.locator('#left').fill('0.4');
      if (mode === 3) await page.locator('#otherPrice').fill('dear');
      if (mode === 4) await page.getByRole('button', { name: 'Show a code' }).click();
      expect(await findViolations(page), `in mode ${mode}`).toEqual([]);
    }
    await page.getByRole('button', { name: 'Another quilt' }).click();
    await page.getByRole('heading', { name: 'What do you need?' }).waitFor();
    expect(await findViolations(page)).toEqual([]);
  });

  test.each([
    [320, 568],
    [360, 740],
    [740, 360],
    [1280, 800],
  ])('at %d by %d nothing has to be scrolled sideways', async (width, height) => {
    const page = await open(PLAN, { width, height });
    for (const mode of MODES) {
      await turnTo(page, mode);
      const over = await page.evaluate(() => document.documentElement.scrollWidth - innerWidth);
      expect(over, `in mode ${mode}`).toBeLessThanOrEqual(0);
    }
  });

  test('nothing moves where motion is not wanted', async () => {
    const page = await open(PLAN, { ...phone, reducedMotion: true });
    await turnTo(page, 4);
    expect(await page.evaluate(() => document.getAnimations().length)).toBe(0);
  });

  test('the keyboard alone goes all the way', async () => {
    const page = await open(PLAN, phone);
    await page.locator('.modes input').first().focus();
    await page.keyboard.press('ArrowRight');
    await page.keyboard.press('Tab');
    await page.keyboard.type('2');
    await page.locator('.verdict').waitFor();
    await page.locator('.tick input').focus();
    await page.keyboard.press('Space');
    await page.keyboard.press('Tab');
    await page.keyboard.press('Enter');
    expect(await page.locator('h2').textContent()).toBe('Print B');
    expect(await page.locator('.sum').textContent()).toContain('1 of 5 bought');
  });

  test('its address holds all that was typed and ticked, and opens it on another phone', async () => {
    const page = await open(PLAN, phone);
    await page.locator('#price').fill('12.99');
    await page.locator('.tick').click();
    await page.getByLabel('The next cloth').click();
    await page.locator('#width').fill('43 1/2');
    await page.waitForURL(/1\.width=/);
    const other = await open(page.url(), phone);
    expect(await other.locator('h2').textContent()).toBe('Print B');
    expect(await other.locator('#width').inputValue()).toBe('43 1/2');
    expect(await other.locator('.sum').textContent()).toContain('1 of 5 bought');
    await other.getByLabel('The cloth before').click();
    expect(await other.locator('#price').inputValue()).toBe('12.99');
  });

  test('it shares by the system where there is one, and by a code everywhere', async () => {
    const page = await open('/counter', phone);
    await page.evaluate(() => {
      const shared: unknown[] = [];
      Object.assign(globalThis, { shared });
      Object.defineProperty(navigator, 'share', {
        value: async (given: unknown) => shared.push(given),
      });
    });
    await page.locator('#address').fill('https://quilts.example/?target.width=40&target.height=50');
    await page.getByRole('button', { name: 'Open it' }).click();
    await turnTo(page, 4);
    await page.getByRole('button', { name: 'Share' }).click();
    const shared = await page.evaluate(() => (globalThis as unknown as { shared: unknown }).shared);
    expect(shared).toEqual([{ url: page.url() }]);
    await page.getByRole('button', { name: 'Show a code' }).click();
    await page.getByRole('img', { name: 'This list, for another phone' }).waitFor();
  });

  test('the last plan of the plan page is one tap away', async () => {
    const page = await open('/?target.size=lap&block.cut=8', phone);
    await page.locator('ragbloom-plan .picture').first().waitFor();
    await page.goto(new URL('/counter', page.url()).href);
    await page.getByRole('button', { name: 'The last plan on this device' }).click();
    await page.getByRole('heading', { name: 'Print A' }).waitFor();
    expect(page.url()).toContain('?target.size=lap&block.cut=8');
  });

  test('without scripts it says what still works', async () => {
    const page = await open('/counter', { javaScript: false });
    expect(await page.locator('noscript').textContent()).toContain('what to buy');
  });
});
