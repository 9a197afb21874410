import type { Page } from 'playwright-core';
import { describe, expect, test } from 'vitest';
import { findViolations } from '../support/axe.ts';
import { usePages, type View } from '../support/browser.ts';

const open = usePages();
const PHONE = { width: 360, height: 740 } as const;

async function openPlan(path: string, view?: View): Promise<Page> {
  const page = await open(path, view);
  await page.locator('ragbloom-plan .figures').waitFor();
  await page.locator('ragbloom-plan .busy').waitFor({ state: 'detached' });
  await page.locator('ragbloom-plan .work').waitFor();
  return page;
}

async function openFocus(path = '/', view?: View): Promise<Page> {
  const page = await openPlan(path, view);
  await page.getByRole('button', { name: 'Step by step' }).click();
  await page.locator('dialog.focus').waitFor();
  return page;
}

const step = (page: Page) => page.locator('.focus header b').textContent();

describe('the work step by step', () => {
  test.each<[string, View]>([
    ['at a desk', {}],
    ['on a phone in the dark', { ...PHONE, dark: true }],
    ['in forced colours', { forcedColors: true }],
  ])('has nothing wrong that axe finds %s', async (_case, view) => {
    const page = await openFocus('/?target.size=cot', view);
    for (let turn = 0; turn < 6; turn += 1) {
      expect(await findViolations(page)).toEqual([]);
      await page.keyboard.press('ArrowRight');
      await page.keyboard.press('ArrowRight');
    }
  });

  test('fills a window of 320 pixels and no more, with a way on of at least 64', async () => {
    const page = await openFocus('/?target.size=california-king&block.cut=6', {
      width: 320,
      height: 568,
    });
    for (let turn = 0; turn < 13; turn += 1) {
      const wide = await page
        .locator('.sight')
        .evaluate((sight) => sight.scrollWidth - sight.clientWidth);
      expect(wide, `step ${turn + 1}`).toBe(0);
      await page.keyboard.press('PageDown');
    }
    const next = await page.getByRole('button', { name: 'All done' }).boundingBox();
    expect(next?.height).toBeGreaterThanOrEqual(64);
    expect(next?.width).toBeGreaterThanOrEqual(150);
    for (const button of await page.locator('.focus button').all()) {
      const box = await button.boundingBox();
      expect(Math.min(box?.height ?? 0, box?.width ?? 0)).toBeGreaterThanOrEqual(44);
    }
  });

  test('is done by one key, keeps its ticks on the device and gives the focus back', async () => {
    const page = await openPlan('/?target.width=40&target.height=50');
    const steps = await page.locator('.work ol > li').count();
    await page.getByRole('button', { name: 'Step by step' }).focus();
    await page.keyboard.press('Enter');
    await page.locator('dialog.focus').waitFor();
    for (let done = 0; done < steps; done += 1) {
      expect(await step(page)).toBe(`Step ${done + 1} of ${steps}`);
      await page.keyboard.press('Enter');
    }
    await page.locator('dialog').waitFor({ state: 'detached' });
    const focused = await page.evaluate(
      () => document.querySelector('ragbloom-plan')?.shadowRoot?.activeElement?.textContent,
    );
    expect(focused).toContain('Step by step');
    expect(await page.locator('.work header').textContent()).toContain(`${steps} of ${steps} done`);
    await page.reload();
    await expect.poll(() => page.locator('.work input:checked').count()).toBe(steps);
  });

  test('begins where the work was left, and Escape leaves it', async () => {
    const page = await openPlan('/');
    for (const box of (await page.locator('.work ol input').all()).slice(0, 3)) await box.check();
    await page.getByRole('button', { name: 'Step by step' }).click();
    await page.locator('dialog.focus').waitFor();
    expect(await step(page)).toMatch(/^Step 4 of/);
    await page.keyboard.press('Escape');
    await page.locator('dialog').waitFor({ state: 'detached' });
    expect(await page.locator('.work input:checked').count()).toBe(3);
  });

  test('keeps the keyboard within it while it is open', async () => {
    const page = await openFocus();
    for (let turn = 0; turn < 12; turn += 1) {
      await page.keyboard.press('Tab');
      const isInside = await page.evaluate(() => {
        const inner = document.querySelector('ragbloom-plan')?.shadowRoot?.activeElement;
        return inner === null || inner?.closest('dialog') !== null;
      });
      expect(isInside).toBe(true);
    }
  });
});
