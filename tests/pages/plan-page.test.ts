import type { Page } from 'playwright-core';
import { describe, expect, test } from 'vitest';
import { findViolations } from '../support/axe.ts';
import { usePages, type View } from '../support/browser.ts';

const open = usePages();
const PHONE = { width: 360, height: 740 } as const;
const REFUSED = /422|ERR_FAILED/;

/** Opens a path and waits until a plan is on the table. */
async function openPlan(path: string, view?: View): Promise<Page> {
  const page = await open(path, view);
  await settle(page);
  return page;
}

async function settle(page: Page): Promise<void> {
  await page.locator('ragbloom-plan .figures').waitFor();
  await page.locator('ragbloom-plan .busy').waitFor({ state: 'detached' });
}

/** Opens all that is folded. */
async function unfold(page: Page): Promise<void> {
  await page.locator('details').evaluateAll((folds) => {
    for (const fold of folds) fold.setAttribute('open', '');
  });
}

/** Opens the page where the service cannot be reached. */
async function openAlone(view?: View): Promise<Page> {
  const page = await open('/health', { ...view, expected: REFUSED });
  await page.route('**/v1/**', (route) => route.abort());
  await page.goto(new URL('/', page.url()).href);
  await settle(page);
  return page;
}

const figures = async (page: Page) =>
  ((await page.locator('.figures').textContent()) ?? '').replaceAll(/\s+/g, ' ').trim();

describe('what axe finds wrong on the page /', () => {
  test.each<[string, string, View]>([
    ['at a desk', '/', {}],
    ['at a desk in the dark', '/', { dark: true }],
    ['on a phone', '/', PHONE],
    ['on a phone in the dark', '/', { ...PHONE, dark: true }],
    ['in forced colours', '/', { forcedColors: true }],
    ['for a bed in centimetres', '/?unit=cm&target.size=king', PHONE],
    ['with a danger', '/?target.size=cot', { dark: true }],
    [
      'with an address that cannot be had',
      '/?target.size=lap&washes=999&block.seam=wide',
      { expected: REFUSED },
    ],
    ['with every figure explained', '/?target.size=lap&explain=true', PHONE],
  ])('is nothing %s', async (_case, path, view) => {
    const page = await openPlan(path, view);
    await unfold(page);
    await settle(page);
    await unfold(page);
    expect(await findViolations(page)).toEqual([]);
  });

  test('is nothing where fields are at fault', async () => {
    const page = await openPlan('/?target.width=40&target.height=50', {
      ...PHONE,
      expected: REFUSED,
    });
    await page.getByLabel('Width, washed').fill('wide');
    await page.getByLabel('In your own words').fill('something nice');
    await page.keyboard.press('Enter');
    await page.locator('.fault').nth(1).waitFor();
    expect(await findViolations(page)).toEqual([]);
  });

  test('is nothing where the device has to work it out', async () => {
    expect(await findViolations(await openAlone(PHONE))).toEqual([]);
  });
});

describe('the page /', () => {
  test('is titled and described', async () => {
    const page = await openPlan('/');
    expect(await page.title()).toMatch(/rag quilt/i);
    expect(await page.locator('meta[name=description]').getAttribute('content')).toMatch(/.{60}/);
  });

  test('fits a window of 320 pixels, whatever is open', async () => {
    const page = await openPlan('/?target.size=california-king', { width: 320, height: 600 });
    await unfold(page);
    expect(await page.evaluate(() => document.documentElement.scrollWidth)).toBe(320);
  });

  test('has targets of 44 pixels on a phone', async () => {
    const page = await openPlan('/', PHONE);
    const targets = page.locator('button, select, input[type=text], .chip, .check, summary');
    const boxes = await Promise.all((await targets.all()).map((target) => target.boundingBox()));
    const small = boxes.filter((box) => box !== null && Math.min(box.width, box.height) < 43.9);
    expect(boxes.length).toBeGreaterThan(20);
    expect(small).toEqual([]);
  });

  test('keeps three figures in sight on a phone, and never over what has the focus', async () => {
    const page = await openPlan('/', PHONE);
    const foot = page.locator('.foot');
    await foot.scrollIntoViewIfNeeded();
    for (let step = 0; step < 45; step += 1) {
      await page.keyboard.press('Tab');
      const hidden = await page.evaluate(() => {
        const root = document.querySelector('ragbloom-plan')?.shadowRoot;
        const focus = root?.activeElement?.getBoundingClientRect();
        const bar = root?.querySelector('.foot')?.getBoundingClientRect();
        return (
          focus !== undefined &&
          bar !== undefined &&
          focus.bottom > bar.top + 1 &&
          focus.top < bar.bottom
        );
      });
      expect(hidden, `step ${step}`).toBe(false);
    }
  });

  test('can be worked by the keyboard alone, from the wish to the last tick', async () => {
    const page = await openPlan('/');
    const focused = () =>
      page.evaluate(() => {
        const inner = document.querySelector('ragbloom-plan')?.shadowRoot?.activeElement;
        return inner?.id || inner?.getAttribute('name') || inner?.textContent?.trim() || '';
      });
    const tabTo = async (wanted: RegExp) => {
      for (let step = 0; step < 80; step += 1) {
        if (wanted.test(await focused())) return;
        await page.keyboard.press('Tab');
      }
      throw new Error(`No key leads to ${wanted}.`);
    };
    await tabTo(/^words$/);
    await page.keyboard.type('a throw for the reading room, about 40 by 50 inches');
    await page.keyboard.press('Enter');
    await page.waitForURL(/target\.width=40&target\.height=50/);
    await tabTo(/^target-height$/);
    await page.keyboard.press('ControlOrMeta+A');
    await page.keyboard.type('52 1/2');
    await page.waitForURL(/target\.height=52\.5/);
    await tabTo(/^shown$/);
    await page.keyboard.press('ArrowLeft');
    expect(await figures(page)).toMatch(/^Sewn/);
    await tabTo(/^cut$/);
    await page.keyboard.press('ArrowRight');
    await page.waitForURL(/block\.cut=6/);
    await settle(page);
    const boxes = page.locator('.work input');
    await boxes.last().focus();
    await page.keyboard.press('Space');
    expect(await page.locator('.work header').textContent()).toMatch(/1 of \d+ done/);
  });

  test('has a link for each plan, and goes back and forward between them', async () => {
    const page = await openPlan('/');
    expect(new URL(page.url()).search).toBe('');
    const first = await figures(page);
    await page.locator('#kind').selectOption('Lap');
    await page.waitForURL(/target\.size=lap/);
    await settle(page);
    const second = await figures(page);
    await page.goBack();
    await expect.poll(() => figures(page)).toBe(first);
    await page.goForward();
    await expect.poll(() => figures(page)).toBe(second);
    const link = await openPlan(new URL(page.url()).pathname + new URL(page.url()).search);
    expect(await figures(link)).toBe(second);
  });

  test('remembers ticks from one visit to the next', async () => {
    const page = await openPlan('/');
    await page.locator('.work label').first().click();
    await page.reload();
    await settle(page);
    expect(await page.locator('.work input').first().isChecked()).toBe(true);
  });

  test('works where storage throws', async () => {
    const page = await open('/health');
    await page.addInitScript(() => {
      Object.defineProperty(globalThis, 'localStorage', {
        get: () => {
          throw new DOMException('no', 'SecurityError');
        },
      });
    });
    await page.goto(new URL('/', page.url()).href);
    await settle(page);
    await page.locator('.work label').first().click();
    expect(await page.locator('.work header').textContent()).toMatch(/1 of/);
  });

  test('works out the same figures on the device when the service is away, and says so', async () => {
    const there = await figures(await openPlan('/'));
    const page = await openAlone();
    expect(await figures(page)).toBe(there);
    expect(await page.locator('[role=alert]').textContent()).toMatch(/your device worked this out/);
  });

  test('plans on when the network is lost after it was loaded', async () => {
    const page = await openPlan('/?target.width=40&target.height=50', {
      expected: /ERR_INTERNET_DISCONNECTED/,
    });
    await page.waitForFunction(() => {
      const names = performance.getEntriesByType('resource').map(({ name }) => name);
      return ['on-device', 'read-words', 'take-wish', 'switch-unit'].every((part) =>
        names.some((name) => new RegExp(`[/-]${part}-\\w+\\.js$`).test(name)),
      );
    });
    const before = await figures(page);
    await page.context().setOffline(true);
    await page.locator('#target-width').fill('60');
    await expect.poll(() => figures(page)).not.toBe(before);
    expect(await page.locator('[role=alert]').textContent()).toMatch(/your device worked this out/);
    await page.getByLabel('In your own words').fill('30 x 40');
    await page.keyboard.press('Enter');
    await expect.poll(() => page.locator('#target-width').inputValue()).toBe('30');
    expect(await page.locator('[role=alert]').textContent()).toMatch(/your device worked this out/);
  });

  test('tells what it passed over of a wish within 320 pixels, however long the word', async () => {
    const page = await openPlan('/', { width: 320, height: 740 });
    await page.getByLabel('In your own words').fill(`queen, 5 prints, ${'scalloped'.repeat(12)}`);
    await page.keyboard.press('Enter');
    await page.getByText(/Passed over: (scalloped){12}\./).waitFor();
    expect(await page.evaluate(() => document.documentElement.scrollWidth)).toBe(320);
  });

  test('keeps the field that one mends a fault in', async () => {
    const page = await openPlan('/?target.width=40&target.height=50&block.cut=8', {
      expected: REFUSED,
    });
    await page.locator('.blocks summary').click();
    const seam = page.locator('#block-seam');
    await seam.fill('5');
    await page.locator('#block-seam-fault').waitFor();
    await seam.fill('1');
    await settle(page);
    await page.locator('#block-seam-fault').waitFor({ state: 'detached' });
    expect(await seam.isVisible()).toBe(true);
    expect(await seam.evaluate((field) => field.matches(':focus'))).toBe(true);
  });

  test('strikes through work that is done, and no setting', async () => {
    const page = await openPlan('/');
    await page.locator('.cloth summary').click();
    await page.locator('.work label').first().click();
    const line = (selector: string) =>
      page
        .locator(selector)
        .first()
        .evaluate((label) => getComputedStyle(label).textDecorationLine);
    expect(await line('.cloth .check:has(:checked) span')).toBe('none');
    expect(await line('.work .check:has(:checked) span')).toBe('line-through');
  });

  test('keeps the chips of eighths under their field and off the others', async () => {
    const page = await openPlan('/?target.width=40&target.height=50', PHONE);
    const field = page.locator('#target-width');
    await field.focus();
    const chips = page.locator('.fractions').first();
    await chips.evaluate((element) => {
      (element as HTMLElement).style.display = 'grid';
    });
    const box = await chips.boundingBox();
    const own = await field.boundingBox();
    expect(box?.y).toBeGreaterThanOrEqual((own?.y ?? 0) + (own?.height ?? 0));
    for (const other of await page.locator('input[type=text]:not(#target-width), select').all()) {
      const their = await other.boundingBox();
      if (box === null || their === null) continue;
      const isApart =
        their.x >= box.x + box.width ||
        box.x >= their.x + their.width ||
        their.y >= box.y + box.height ||
        box.y >= their.y + their.height;
      expect(isApart).toBe(true);
    }
  });

  test('is not long where every figure is explained', async () => {
    const page = await openPlan('/?target.size=lap&explain=true', PHONE);
    await unfold(page);
    const height = await page
      .locator('[part=grounds] > details:last-of-type')
      .evaluate((part) => part.getBoundingClientRect().height);
    expect(height).toBeLessThan(5000);
  });

  test('plans without a script: the result of its address, a drawing, and a form to ask again', async () => {
    const page = await open('/?target.width=40&target.height=50', { javaScript: false });
    expect(await page.getByRole('row', { name: /^Cut each block/ }).textContent()).toContain(
      '12 in',
    );
    const drawing = page.locator('ragbloom-plan img');
    expect(await drawing.evaluate((image: HTMLImageElement) => image.naturalWidth)).toBeGreaterThan(
      0,
    );
    await page.getByLabel('Width').fill('60');
    await page.getByRole('button', { name: 'Ask again' }).click();
    expect(new URL(page.url()).searchParams.get('target.width')).toBe('60');
    expect(await page.getByRole('row', { name: /^Sewn/ }).textContent()).toMatch(/6\d/);
    await page.goto(new URL('/', page.url()).href);
    await page.getByRole('row', { name: /^Cut each block/ }).waitFor();
  });
});

describe('the page / on paper', () => {
  test.each(['A4', 'Letter'])('takes at most three sheets of %s', async (format) => {
    const page = await openPlan('/');
    const pdf = (await page.pdf({ format })).toString('latin1');
    const sheets = pdf.match(/\/Type\s*\/Page\b(?!s)/g)?.length ?? 0;
    expect(sheets).toBeGreaterThan(0);
    expect(sheets).toBeLessThanOrEqual(3);
  });

  test('has plan, shopping, work and empty boxes, and no controls', async () => {
    const page = await openPlan('/');
    await page.locator('.work label').first().click();
    await page.emulateMedia({ media: 'print' });
    for (const part of ['.figures', '.picture', '.shopping table', '.work ol', '.cautions']) {
      expect(await page.locator(part).isVisible(), part).toBe(true);
    }
    const controls = page.locator(
      'nav, button, select, input[type=text], input[type=radio], summary, .foot',
    );
    const visible = await Promise.all((await controls.all()).map((control) => control.isVisible()));
    expect(visible.filter((isVisible) => isVisible)).toEqual([]);
  });
});
