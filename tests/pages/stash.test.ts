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
const TAG = 'ragbloom-stash';
const PHONE = { width: 360, height: 740 } as const;
const REFUSED = /422|ERR_FAILED/;
const TWO =
  '/stash?pieces.0.id=Moss&pieces.0.role=top&pieces.0.width=44&pieces.0.length=36&pieces.1.id=Fog' +
  '&pieces.1.role=backing&pieces.1.width=42&pieces.1.length=72&block.cut=8';

async function openStash(path = '/stash', view?: View): Promise<Page> {
  const page = await open(path, view);
  await settlePage(page, TAG);
  return page;
}

async function openAlone(view?: View): Promise<Page> {
  const page = await open('/health', { ...view, expected: REFUSED });
  await page.route('**/v1/**', (route) => route.abort());
  await page.goto(new URL('/stash', page.url()).href);
  await settlePage(page, TAG);
  return page;
}

const figures = async (page: Page) =>
  ((await page.locator('.figures').textContent()) ?? '').replaceAll(/\s+/g, ' ').trim();

describe('what axe finds wrong on the page /stash', () => {
  test.each<[string, string, View]>([
    ['at a desk', '/stash', {}],
    ['at a desk in the dark', '/stash', { dark: true }],
    ['on a phone', '/stash', PHONE],
    ['on a phone in the dark', '/stash', { ...PHONE, dark: true }],
    ['in forced colours', '/stash', { forcedColors: true }],
    ['with an address of its own', TWO, PHONE],
    [
      'where cells are at fault',
      TWO.replace('width=44', 'width=wide').replace('role=top', 'role=hem'),
      { ...PHONE, expected: REFUSED },
    ],
    [
      'where cells are at fault in the dark',
      TWO.replace('width=44', 'width=wide'),
      { dark: true, expected: REFUSED },
    ],
  ])('is nothing %s', async (_case, path, view) => {
    const page = await openStash(path, view);
    for (const summary of await page.locator('summary').all()) await summary.click();
    expect(await findViolations(page)).toEqual([]);
  });

  test('is nothing where a file was refused, and none where the table is empty', async () => {
    const page = await openStash('/stash', PHONE);
    await openFile(page, 'name,width\nMoss,44\n');
    await page.locator('.notice').waitFor();
    expect(await findViolations(page)).toEqual([]);
    await page.getByRole('button', { name: /start with an empty table/i }).click();
    await page.locator('.waiting').waitFor();
    expect(await findViolations(page)).toEqual([]);
  });

  test('is nothing where the device has to work it out', async () => {
    const page = await openAlone(PHONE);
    expect(await page.getByRole('alert').first().textContent()).toContain('your device');
    expect(await figures(page)).toMatch(/\d × \d/);
    expect(await findViolations(page)).toEqual([]);
  });
});

describe('the page /stash', () => {
  test('shows a quilt before anything is typed, and says that the cloth is invented', async () => {
    const page = await openStash();
    expect(await figures(page)).toMatch(/Washed.*Blocks\d × \d/);
    expect(await page.getByText('a shop that does not exist').count()).toBe(1);
    expect(await page.getByRole('img').count()).toBeGreaterThan(4);
  });

  test('fits a window of 320 pixels, whatever is open', async () => {
    const page = await openStash('/stash', { width: 320, height: 600 });
    for (const summary of await page.locator('summary').all()) await summary.click();
    await page.getByLabel('Several pieces show one print').check();
    expect(await page.evaluate(() => document.documentElement.scrollWidth)).toBe(320);
  });

  test('has targets of 44 pixels on a phone', async () => {
    expect(await findSmall(await openStash('/stash', PHONE))).toEqual([]);
  });

  test('is worked by the keyboard alone: a row typed, a quilt chosen', async () => {
    const page = await openStash(TWO);
    const before = await figures(page);
    await page.getByLabel('Row 1, name').focus();
    await page.keyboard.press('ArrowDown');
    await page.keyboard.press('Enter');
    await page.keyboard.type('Rust');
    await page.keyboard.press('Tab');
    await page.keyboard.type('T');
    await page.keyboard.press('Tab');
    await page.keyboard.type('44');
    await page.keyboard.press('Tab');
    await page.keyboard.type('1 yd');
    await settlePage(page, TAG);
    expect((await readTable(page)).slice(2)).toEqual(['Rust|top|44|1 yd|', '|top|||']);
    expect(new URL(page.url()).searchParams.get('pieces.2.length')).toBe('36');
    const others = page.locator('.options button');
    await others.nth(1).focus();
    await page.keyboard.press('Enter');
    expect(await others.nth(1).getAttribute('aria-pressed')).toBe('true');
    expect(await figures(page)).not.toBe(before);
  });

  test('takes what was pasted from a spreadsheet, and puts back what was there', async () => {
    const page = await openStash(TWO);
    const before = await readTable(page);
    await page.getByLabel('Row 3, name').focus();
    await pasteText(page, TAG, 'Oat\tTop\t21 1/2"\t18\t3\r\nSnow\tbacking\t42\t2 yd\t\r\n');
    await settlePage(page, TAG);
    expect((await readTable(page)).slice(2, 4)).toEqual([
      'Oat|top|21 1/2"|18|3',
      'Snow|backing|42|2 yd|',
    ]);
    await page.getByRole('button', { name: 'Put back what was there' }).click();
    await settlePage(page, TAG);
    expect(await readTable(page)).toEqual(before);
  });

  test('tells of more rows than it takes and changes nothing', async () => {
    const page = await openStash(TWO);
    const before = await readTable(page);
    await page.getByLabel('Row 1, name').focus();
    await pasteText(page, TAG, Array.from({ length: 61 }, (_, at) => `n${at}\ttop`).join('\n'));
    await page.getByText('The table takes 60 rows, and row 61').waitFor();
    expect(await readTable(page)).toEqual(before);
  });

  test('keeps what it saved when it is opened again, formulas made harmless', async () => {
    const page = await openStash(TWO);
    await page.getByLabel('Row 1, name').fill('=1+1, "Moss"');
    await page.getByLabel('Row 1, length').fill('35 1/2');
    await settlePage(page, TAG);
    const before = await readTable(page);
    const saved = await saveFile(page);
    expect(saved.split('\r\n')).toEqual([
      'role,name,print,width (in),length (in),count',
      'top,"\'=1+1, ""Moss""",,44,35 1/2,',
      'backing,Fog,,42,72,',
      '',
    ]);
    await page.getByLabel('Take Fog away').click();
    await openFile(page, saved);
    await page.getByText('2 rows read from the file').waitFor();
    expect(await readTable(page)).toEqual(before);
  });

  test.each([
    ['a column is missing', 'role,name,width\ntop,Moss,44\n', /Row 1 names no column “length”/],
    [
      'a quote is astray',
      'role,name,width,length\ntop,"Moss,44,36\n',
      /Row 2 has a quotation mark/,
    ],
    ['there is nothing in it', '', /no cloth in that file/],
    [
      'there are a million rows',
      `role,name,width,length\n${'top,Moss,44,36\n'.repeat(1_000_000)}`,
      /The table takes 60 rows, and row 62/,
    ],
  ])(
    'refuses a file where %s, naming the row, and keeps what was typed',
    async (_case, text, said) => {
      const page = await openStash(TWO);
      const before = await readTable(page);
      await openFile(page, text);
      await page.getByText(said).waitFor();
      expect(await readTable(page)).toEqual(before);
    },
  );

  test('opens a file in centimetres as centimetres', async () => {
    const page = await openStash(TWO);
    await openFile(page, 'name;role;width (cm);length (cm)\nMoos;Top;110;"90,5"\n');
    await settlePage(page, TAG);
    expect((await readTable(page))[0]).toBe('Moos|top|110|90,5|');
    expect(await figures(page)).toContain('cm');
  });

  test('says at its cell what is wrong, and keeps what was typed and shown', async () => {
    const page = await openStash(TWO, { expected: REFUSED });
    const shown = await figures(page);
    const cell = page.getByLabel('Row 1, width');
    await cell.fill('wide');
    await page.locator('.cloths .fault').waitFor();
    const id = (await cell.getAttribute('aria-describedby')) ?? '';
    expect(await page.locator(`#${id}`).textContent()).toContain('“wide” is not a length');
    expect(await cell.getAttribute('aria-invalid')).toBe('true');
    expect(await figures(page)).toBe(shown);
    expect(await page.getByText('What is shown is from before').count()).toBe(1);
  });

  test('remembers what was typed, faults and all, when the page is opened again', async () => {
    const page = await openStash(TWO, { expected: REFUSED });
    await page.getByLabel('Row 1, width').fill('wide');
    await page.locator('.cloths .fault').waitFor();
    await page.reload();
    await settlePage(page, TAG);
    expect((await readTable(page))[0]).toBe('Moss|top|wide|36|');
  });

  test('says every length in the other unit, and back', async () => {
    const page = await openStash(TWO);
    const before = await readTable(page);
    await page.getByText('cm', { exact: true }).first().click();
    await settlePage(page, TAG);
    expect((await readTable(page))[0]).toBe('Moss|top|111.76|91.44|');
    await page.getByText('in', { exact: true }).first().click();
    await settlePage(page, TAG);
    expect(await readTable(page)).toEqual(before);
  });

  test('leads to the plan of the quilt shown', async () => {
    const page = await openStash(TWO);
    const [, grid = ''] = /Blocks(\d+ × \d+)/.exec(await figures(page)) ?? [];
    await page.getByRole('link', { name: 'Plan this quilt' }).click();
    await page.locator('ragbloom-plan .figures').waitFor();
    expect(await figures(page)).toContain(grid);
  });

  test('prints the picture, what to cut and what is left, and no table to type into', async () => {
    const page = await openStash();
    await page.emulateMedia({ media: 'print' });
    expect(await page.locator('.cloths').isVisible()).toBe(false);
    expect(await page.getByRole('button').count()).toBe(0);
    expect(await page.locator('.picture').isVisible()).toBe(true);
    expect(await page.locator('.cuttings svg').first().isVisible()).toBe(true);
    const pdf = await page.pdf({ format: 'A4' });
    expect(pdf.toString('latin1').match(/\/Type\s*\/Page\b/g)?.length ?? 0).toBeLessThanOrEqual(2);
  });
});
