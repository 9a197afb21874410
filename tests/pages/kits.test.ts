import type { Page } from 'playwright-core';
import { describe, expect, test } from 'vitest';
import { findViolations } from '../support/axe.ts';
import { usePages, type View } from '../support/browser.ts';
import {
  findSmall,
  openFile,
  pasteText,
  readTable,
  saveFile,
  settlePage,
} from '../support/cloth-page.ts';

const open = usePages();
const TAG = 'ragbloom-kits';
const PHONE = { width: 360, height: 740 } as const;
const REFUSED = /422|ERR_FAILED/;
const THREE =
  '/kits?plan.target.columns=4&plan.target.rows=5&plan.block.cut=8&bolts.0.id=Moss&bolts.0.role=top' +
  '&bolts.0.width=44&bolts.0.length=180&bolts.0.cost=1000&bolts.1.id=Rust&bolts.1.role=top' +
  '&bolts.1.width=44&bolts.1.length=180&bolts.1.cost=1100&bolts.2.id=Fog&bolts.2.role=backing' +
  '&bolts.2.width=42&bolts.2.length=360&bolts.2.cost=800&costs.labour=500&currency=EUR';

async function openKits(path = '/kits', view?: View): Promise<Page> {
  const page = await open(path, view);
  await settlePage(page, TAG);
  return page;
}

async function openAlone(view?: View): Promise<Page> {
  const page = await open('/health', { ...view, expected: REFUSED });
  await page.route('**/v1/**', (route) => route.abort());
  await page.goto(new URL('/kits', page.url()).href);
  await settlePage(page, TAG);
  return page;
}

const figures = async (page: Page) =>
  ((await page.locator('.figures').textContent()) ?? '').replaceAll(/\s+/g, ' ').trim();

describe('what axe finds wrong on the page /kits', () => {
  test.each<[string, string, View]>([
    ['at a desk', '/kits', {}],
    ['at a desk in the dark', '/kits', { dark: true }],
    ['on a phone', '/kits', PHONE],
    ['on a phone in the dark', '/kits', { ...PHONE, dark: true }],
    ['in forced colours', '/kits', { forcedColors: true }],
    ['with more kits wanted than there are', `${THREE}&kits=40`, PHONE],
    [
      'where cells are at fault',
      `${THREE.replace('width=44', 'width=wide')}&costs.margin=120`,
      { ...PHONE, expected: REFUSED },
    ],
    [
      'where cells are at fault in the dark',
      THREE.replace('width=44', 'width=2'),
      { dark: true, expected: REFUSED },
    ],
  ])('is nothing %s', async (_case, path, view) => {
    const page = await openKits(path, view);
    for (const summary of await page.locator('summary').all()) await summary.click();
    expect(await findViolations(page)).toEqual([]);
  });

  test('is nothing where the device has to work it out', async () => {
    const page = await openAlone(PHONE);
    expect(await page.getByRole('alert').first().textContent()).toContain('your device');
    expect(await figures(page)).toMatch(/Kits ?\d+/);
    expect(await findViolations(page)).toEqual([]);
  });
});

describe('the page /kits', () => {
  test('shows kits before anything is typed, and says that the bolts are invented', async () => {
    const page = await openKits();
    expect(await figures(page)).toMatch(/Kits ?\d+.*Costs ?\$\d+\.\d\d.*Sells at ?\$\d+\.\d\d/);
    expect(await page.getByText('a shop that does not exist').count()).toBe(1);
    expect(await page.getByRole('img').count()).toBeGreaterThan(5);
  });

  test('fits a window of 320 pixels, whatever is open', async () => {
    const page = await openKits('/kits', { width: 320, height: 600 });
    for (const summary of await page.locator('summary').all()) await summary.click();
    await page.getByLabel('Several pieces show one print').check();
    expect(await page.evaluate(() => document.documentElement.scrollWidth)).toBe(320);
  });

  test('has targets of 44 pixels on a phone', async () => {
    expect(await findSmall(await openKits('/kits', PHONE))).toEqual([]);
  });

  test('is worked by the keyboard alone: a bolt typed, a price set', async () => {
    const page = await openKits(THREE);
    await page.getByLabel('Row 3, name').focus();
    await page.keyboard.press('ArrowDown');
    for (const typed of ['Oat', 'T', '44', '5 yd', '9.5']) {
      await page.keyboard.type(typed);
      await page.keyboard.press('Tab');
    }
    await settlePage(page, TAG);
    expect((await readTable(page))[3]).toBe('Oat|top|44|5 yd|9.5');
    expect(new URL(page.url()).searchParams.get('bolts.3.cost')).toBe('950');
    await page.getByLabel('no price').focus();
    await page.keyboard.press('ArrowRight');
    await settlePage(page, TAG);
    expect(await figures(page)).toContain('Sells at');
  });

  test('counts money in the currency’s own decimals', async () => {
    const page = await openKits(THREE);
    expect(await figures(page)).toMatch(/Costs ?€\d+\.\d\d$/);
    const yen = await openKits(THREE.replace('currency=EUR', 'currency=JPY'));
    expect(await figures(yen)).toMatch(/Costs ?¥[\d,]+$/);
    expect((await readTable(yen))[0]).toBe('Moss|top|44|180|1000');
    expect((await readTable(page))[0]).toBe('Moss|top|44|180|10.00');
  });

  test('says what to buy more where more kits are wanted than there are', async () => {
    const page = await openKits(THREE);
    await page.getByLabel('Kits wanted').fill('40');
    await page.getByText('To make 40 kits, buy more').waitFor();
    expect(await page.locator('.notice li').first().textContent()).toMatch(/yd of .*squares/);
  });

  test('takes what was pasted from a spreadsheet', async () => {
    const page = await openKits(THREE);
    await page.getByLabel('Row 4, name').focus();
    await pasteText(page, TAG, 'Oat\ttop\t44\t5 yd\t9,50\nSnow\tbacking\t42\t4 yd\t7');
    await settlePage(page, TAG);
    expect((await readTable(page)).slice(3, 5)).toEqual([
      'Oat|top|44|5 yd|9,50',
      'Snow|backing|42|4 yd|7',
    ]);
  });

  test('keeps what it saved when it is opened again, formulas made harmless', async () => {
    const page = await openKits(THREE);
    await page.getByLabel('Row 1, name').fill('@Moss');
    await settlePage(page, TAG);
    const before = await readTable(page);
    const saved = await saveFile(page);
    expect(saved.split('\r\n').slice(0, 2)).toEqual([
      'role,name,print,width (in),length (in),cost (EUR)',
      "top,'@Moss,,44,180,10.00",
    ]);
    await page.getByLabel('Take Fog away').click();
    await openFile(page, saved);
    await page.getByText('3 rows read from the file').waitFor();
    expect(await readTable(page)).toEqual(before);
  });

  test('refuses a file without a column, and keeps what was typed', async () => {
    const page = await openKits(THREE);
    const before = await readTable(page);
    await openFile(page, 'role,name,length\ntop,Moss,180\n');
    await page.getByText('Row 1 names no column “width”').waitFor();
    expect(await readTable(page)).toEqual(before);
  });

  test('says at its cell what is no amount, and at its field what is no margin', async () => {
    const page = await openKits(THREE, { expected: REFUSED });
    const shown = await figures(page);
    await page.getByLabel('Row 1, cost a yard').fill('1,250');
    await page.getByText('“1,250” is not an amount').waitFor();
    await page.getByLabel('Row 1, cost a yard').fill('12,50');
    await page.getByText('a margin', { exact: true }).click();
    await page.getByLabel(/^Margin/).fill('100');
    await page.getByText('That is too large. Give at most 99.9').waitFor();
    expect((await figures(page)).split('Costs')[0]).toBe(shown.split('Costs')[0]);
  });

  test('remembers what was typed, faults and all, when the page is opened again', async () => {
    const page = await openKits(THREE, { expected: REFUSED });
    await page.getByLabel('Row 1, cost a yard').fill('dear');
    await page.locator('.cloths .fault').waitFor();
    await page.reload();
    await settlePage(page, TAG);
    expect((await readTable(page))[0]).toBe('Moss|top|44|180|dear');
  });

  test('says lengths and costs in the other unit, and back', async () => {
    const page = await openKits(THREE);
    const before = await readTable(page);
    const shown = await figures(page);
    await page.getByText('cm', { exact: true }).first().click();
    await settlePage(page, TAG);
    expect((await readTable(page))[0]).toBe('Moss|top|111.76|457.2|10.94');
    expect((await figures(page)).slice(0, 8)).toBe(shown.slice(0, 8));
    await page.getByText('in', { exact: true }).first().click();
    await settlePage(page, TAG);
    expect(await readTable(page)).toEqual(before);
    expect(await figures(page)).toBe(shown);
  });

  test('prints kits, cutting and money, and no table to type into', async () => {
    const page = await openKits();
    await page.emulateMedia({ media: 'print' });
    expect(await page.locator('.cloths').isVisible()).toBe(false);
    expect(await page.getByRole('button').count()).toBe(0);
    expect(await page.locator('.unrolled svg').first().isVisible()).toBe(true);
    expect(await page.getByText('One kit on the shelf').isVisible()).toBe(true);
    const pdf = await page.pdf({ format: 'A4' });
    expect(pdf.toString('latin1').match(/\/Type\s*\/Page\b/g)?.length ?? 0).toBeLessThanOrEqual(3);
  });
});
