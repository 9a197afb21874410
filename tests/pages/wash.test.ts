import type { Page } from 'playwright-core';
import { describe, expect, test } from 'vitest';
import { findViolations } from '../support/axe.ts';
import { usePages, type View } from '../support/browser.ts';

const open = usePages();
const PHONE = { width: 360, height: 740 } as const;
const REFUSED = /422|ERR_FAILED/;
/** One pair of marks and no quilt. */
const SWATCH =
  '/wash?swatches.0.fabric=flannel&swatches.0.direction=length&swatches.0.before=10&swatches.0.after=9.5';
const ONE =
  '/wash?swatches.0.fabric=flannel&swatches.0.direction=length&swatches.0.before=10&swatches.0.after=9.5&wanted.width=40&wanted.height=50';

/** Opens a path and waits until an answer is on the table. */
async function openWash(path: string, view?: View): Promise<Page> {
  const page = await open(path, view);
  await settle(page);
  return page;
}

async function settle(page: Page): Promise<void> {
  await page.locator('ragbloom-wash .figures').waitFor();
  await page.locator('ragbloom-wash .busy').waitFor({ state: 'detached' });
}

/** Opens the page where the service cannot be reached. */
async function openAlone(view?: View): Promise<Page> {
  const page = await open('/health', { ...view, expected: REFUSED });
  await page.route('**/v1/**', (route) => route.abort());
  await page.goto(new URL('/wash', page.url()).href);
  await settle(page);
  return page;
}

const read = async (page: Page, selector: string) =>
  ((await page.locator(selector).first().textContent()) ?? '').replaceAll(/\s+/g, ' ').trim();

/** The cell of a swatch, by what it is called. */
const cell = (page: Page, index: number, way: 'along' | 'across', end: 'before' | 'after') =>
  page.getByLabel(`Swatch ${index}, ${way} the roll, ${end}`, { exact: true }).first();

describe('what axe finds wrong on the page /wash', () => {
  test.each<[string, string, View]>([
    ['at a desk', '/wash', {}],
    ['at a desk in the dark', '/wash', { dark: true }],
    ['on a phone', '/wash', PHONE],
    ['on a phone in the dark', '/wash', { ...PHONE, dark: true }],
    ['in forced colours', '/wash', { forcedColors: true }],
    ['in centimetres', '/wash?unit=cm', PHONE],
    ['with one specimen', ONE, PHONE],
    [
      'with skew and a cloth of its own',
      `${ONE}&swatches.0.diagonals.ac=14&swatches.0.diagonals.bd=13.5&swatches.1.fabric=Rose&swatches.1.direction=width&swatches.1.before=10&swatches.1.after=9.9`,
      {},
    ],
    [
      'with an address that cannot be had',
      '/wash?grain=round&wanted.width=40&wanted.height=50',
      { ...PHONE, expected: REFUSED },
    ],
  ])('is nothing %s', async (_case, path, view) => {
    const page = await openWash(path, view);
    for (const summary of await page.locator('summary').all()) await summary.click();
    expect(await findViolations(page)).toEqual([]);
  });

  test.each([PHONE, { dark: true }])(
    'is nothing where cells and fields are at fault (%j)',
    async (view) => {
      const page = await openWash('/wash', { ...view, expected: REFUSED });
      await cell(page, 1, 'along', 'before').fill('0');
      await page.getByLabel('Width', { exact: true }).fill('wide');
      await page.locator('.fault').nth(1).waitFor();
      expect(await findViolations(page)).toEqual([]);
    },
  );

  test('is nothing where the device has to work it out', async () => {
    expect(await findViolations(await openAlone(PHONE))).toEqual([]);
  });
});

describe('the page /wash', () => {
  test('shows a finished answer, marked as invented, before anything is typed', async () => {
    const page = await openWash('/wash');
    expect(await read(page, '.invented')).toContain('from a shop that does not exist');
    expect(await read(page, '.figures')).toMatch(/Sew ?42 × 52 in ?After one wash/);
    expect(await page.locator('.result').count()).toBe(4);
    expect(new URL(page.url()).search).toBe('');
  });

  test('grows its table, keeps what was typed and puts it into the address', async () => {
    const page = await openWash('/wash');
    await cell(page, 4, 'along', 'before').fill('10 in');
    await expect.poll(() => page.getByText('A pair with one figure waits').count()).toBe(1);
    await cell(page, 4, 'along', 'after').fill('24.8 cm');
    await expect.poll(() => page.url()).toContain('swatches.3.before=10&swatches.3.after=9.76');
    expect(await cell(page, 4, 'along', 'after').inputValue()).toBe('24.8 cm');
    await cell(page, 5, 'along', 'before').waitFor();
    expect(await read(page, '.result')).toContain('4 measured');
  });

  test('says at each cell what is wrong with it, and clears nothing', async () => {
    const page = await openWash('/wash', { expected: REFUSED });
    await cell(page, 1, 'along', 'before').fill('0');
    await cell(page, 2, 'along', 'after').fill('44');
    await cell(page, 3, 'across', 'after').fill('wide');
    await page.locator('.fault').nth(2).waitFor();
    for (const [field, typed, said] of [
      [cell(page, 1, 'along', 'before'), '0', 'That is too small.'],
      [cell(page, 2, 'along', 'after'), '44', 'The swatch cannot have changed so much.'],
      [cell(page, 3, 'across', 'after'), 'wide', '“wide” is not a length.'],
    ] as const) {
      expect(await field.inputValue()).toBe(typed);
      expect(await field.getAttribute('aria-invalid')).toBe('true');
      const id = await field.getAttribute('aria-describedby');
      expect(await page.locator(`#${id}`).textContent()).toContain(said);
    }
    expect(await page.getByText('The figures shown are the ones from before.').count()).toBe(1);
  });

  test('says of one specimen that nothing is known of the spread', async () => {
    const page = await openWash(ONE);
    expect(await read(page, '.note')).toContain('nothing is known of the spread');
    expect(await page.locator('.result .next').count()).toBe(0);
  });

  test('leads to a plan that takes these swatches', async () => {
    const page = await openWash('/wash');
    await page.getByRole('link', { name: 'Plan this quilt with these swatches' }).click();
    await page.locator('ragbloom-plan .figures').waitFor();
    expect(page.url()).toContain('swatches.0.fabric=quilting-cotton');
    expect(await read(page, 'ragbloom-plan .figures')).toContain('40 × 49½ in');
    expect(await read(page, 'ragbloom-plan .figures')).toContain('4 × 5');
  });

  test('works itself out on the device where the service is away, and says so', async () => {
    const page = await openAlone();
    expect(await read(page, '[role=alert]')).toContain('your device worked this out');
    await cell(page, 1, 'along', 'after').fill('wide');
    await page.locator('.fault').waitFor();
  });

  test('switches units there and back with every letter kept', async () => {
    const page = await openWash(`${ONE.replace('after=9.5', 'after=9%201%2F2')}`);
    await page.locator('label.chip', { hasText: /^cm$/ }).click();
    await expect.poll(() => cell(page, 1, 'along', 'before').inputValue()).toBe('25.4');
    expect(await cell(page, 1, 'along', 'after').inputValue()).toBe('24.13');
    await page.locator('label.chip', { hasText: /^in$/ }).click();
    await expect.poll(() => cell(page, 1, 'along', 'after').inputValue()).toBe('9 1/2');
  });

  test('remembers half a row on this device', async () => {
    const page = await openWash('/wash');
    await cell(page, 4, 'across', 'before').fill('12 3/8');
    await page.goto(new URL('/wash', page.url()).href);
    await settle(page);
    expect(await cell(page, 4, 'across', 'before').inputValue()).toBe('12 3/8');
  });

  test('is undone by the back button', async () => {
    const page = await openWash('/wash');
    await page.getByText('sewn already').click();
    await expect.poll(() => page.url()).toContain('sewn.width=40');
    await page.getByText('wanted, washed').click();
    await expect.poll(() => page.url()).toContain('wanted.width=40');
    await page.goBack();
    await expect.poll(() => read(page, '.figures')).toContain('Sewn');
  });

  test.each([
    [320, ONE],
    [320, SWATCH],
    [360, SWATCH],
    [560, SWATCH],
  ])('needs no more than its %d px of width for %s', async (across, query) => {
    const page = await open(query, { width: across, height: 640 });
    await page.locator('ragbloom-wash .sizes').waitFor();
    for (const summary of await page.locator('summary').all()) await summary.click();
    const width = await page.evaluate(() => document.documentElement.scrollWidth);
    expect(width).toBeLessThanOrEqual(across);
  });

  test('can be worked with the keyboard alone', async () => {
    const page = await openWash(ONE);
    const focused = () =>
      page.evaluate(() => {
        const inner = document.querySelector('ragbloom-wash')?.shadowRoot?.activeElement;
        return inner?.getAttribute('aria-label') ?? inner?.id ?? '';
      });
    for (
      let step = 0;
      step < 40 && (await focused()) !== 'Swatch 2, along the roll, before';
      step += 1
    ) {
      await page.keyboard.press('Tab');
    }
    await page.keyboard.type('10');
    await page.keyboard.press('Tab');
    await page.keyboard.type('9 5/8');
    await expect.poll(() => page.url()).toContain('swatches.1.after=9.625');
    expect(await read(page, '.result')).toContain('2 measured');
  });

  test('is printed without its controls', async () => {
    const page = await openWash('/wash');
    await page.emulateMedia({ media: 'print' });
    for (const control of await page.getByRole('button').all()) {
      expect(await control.isVisible()).toBe(false);
    }
    expect(await page.locator('ragbloom-wash .picture').isVisible()).toBe(true);
  });

  test('answers without scripts, by a form', async () => {
    const page = await open('/wash', { javaScript: false });
    await page.getByLabel('Swatch 1, after the wash').fill('17');
    await page.getByRole('button', { name: 'Ask again' }).click();
    // 18 in to 17 in is -5.6 percent.
    expect(await page.getByRole('row', { name: /^flannel, length/ }).textContent()).toContain(
      '-5.6 %',
    );
  });
});
