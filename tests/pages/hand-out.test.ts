import type { Page } from 'playwright-core';
import { describe, expect, test } from 'vitest';
import { findViolations } from '../support/axe.ts';
import { usePages, type View } from '../support/browser.ts';
import { type PrintedPage, readPdfPaths } from '../support/read-pdf-paths.ts';

const open = usePages();
/** US Letter 8.5 by 11 in; A4 by ISO 216; millimetres. */
const PAPERS = { Letter: [215.9, 279.4], A4: [210, 297] } as const;

const list = (count: number, write: (at: number) => string) =>
  Array.from({ length: count }, (_, at) => write(at)).join('&');
/** A layer of as many prints as there may be, each with the longest name and a share of its own. */
const crowded = (layer: number, role: string) =>
  `layers.${layer}.role=${role}&${list(
    26,
    (at) =>
      `layers.${layer}.prints.${at}.id=${role}%20print%20of%20a%20long%20name%20${10 + at}&layers.${layer}.prints.${at}.share=${10 + at * 3}`,
  )}`;
const offers =
  'layers.0.offers.0.kind=pieces&layers.0.offers.0.id=Fat%20quarter&layers.0.offers.0.width=21' +
  '&layers.0.offers.0.length=18&layers.0.offers.0.count=1&layers.0.offers.0.most=20';

const PLANS = {
  'a throw': '/',
  'one block': '/?target.columns=1&target.rows=1&block.cut=12',
  'a queen': '/?target.size=queen&block.cut=8.5',
  'a cot quilt with narrow seams':
    '/?target.size=cot&infant=true&block.seam=0.6&block.snipDepth=0.5',
  'a very large one in centimetres':
    '/?unit=cm&target.columns=40&target.rows=45&block.cut=15&layers.0.role=top&layers.0.prints=12' +
    '&layers.1.role=middle&layers.2.role=backing&stitch.bobbin=1000',
  'fat quarters of which there are too few': `/?target.size=throw&layers.0.role=top&layers.0.prints=4&${offers}&layers.1.role=backing`,
  'as many cloths as there may be': `/?target.size=king&block.cut=7&${crowded(0, 'top')}&${crowded(1, 'backing')}`,
} as const;

async function openForm(path: string, view?: View): Promise<Page> {
  const page = await open(path, view);
  await page.locator('ragbloom-plan .figures').waitFor();
  await page.locator('ragbloom-plan .busy').waitFor({ state: 'detached' });
  await page.getByRole('button', { name: 'Hand-out for a class' }).click();
  await page.locator('dialog.form').waitFor();
  return page;
}

/** Presses print; the printer itself is put off until the sheets were looked at. */
async function makeSheets(page: Page, pupils = '12'): Promise<void> {
  await page.evaluate(() => {
    globalThis.print = () => {};
  });
  await page.getByLabel('Heading').fill('Rag quilt evening at the Fog Mill');
  await page.getByLabel('Pupils').fill(pupils);
  await page.getByLabel('A note of your own').fill('We begin at six sharp. Bring tea.');
  await page.getByRole('button', { name: 'Print two pages' }).click();
  await page.locator('.hand-out').waitFor({ state: 'attached' });
}

const read = (pages: readonly PrintedPage[]) =>
  pages.map(({ text }) => text.replace(/\s+/g, ' ')).join('\n');

describe.each(Object.entries(PLANS))('the hand-out of %s', (_name, path) => {
  test.each(['Letter', 'A4'] as const)(
    'takes two pages of %s and all of it fits',
    async (format) => {
      const page = await openForm(path);
      await makeSheets(page);
      const steps = await page.locator('.work ol > li').count();
      const over = await page
        .locator('.leaf')
        .evaluateAll((leaves) =>
          leaves.map((leaf) => [
            leaf.scrollHeight - leaf.clientHeight,
            leaf.scrollWidth - leaf.clientWidth,
          ]),
        );
      expect(over).toEqual([
        [0, 0],
        [0, 0],
      ]);
      const pages = await readPdfPaths(await page.pdf({ format }));
      expect(pages).toHaveLength(2);
      const [width, height] = PAPERS[format];
      expect(pages[0]?.width).toBeCloseTo(width, 0);
      expect(pages[0]?.height).toBeCloseTo(height, 0);
      const text = read(pages);
      for (const said of [
        'Rag quilt evening at the Fog Mill',
        'We begin at six sharp. Bring tea.',
        'The class buys, 12 pupils',
        'Rotary blades, new',
        'Take care',
        'Wash, shake out, dry',
        'A rotary cutter is a blade',
        'under twelve months',
        `${steps}. `,
      ]) {
        expect(text.toLowerCase()).toContain(said.toLowerCase());
      }
      // Nothing of the page around it, and nothing but the sheets once they were printed.
      expect(text).not.toContain('Three wishes to try');
      expect(text).not.toContain('Best fit');
      await expect.poll(() => page.locator('.hand-out').count()).toBe(0);
      expect(await page.evaluate(() => document.adoptedStyleSheets.length)).toBe(0);
    },
  );
});

describe('the hand-out', () => {
  test('tells prints apart by letters, which grey leaves alone', async () => {
    const page = await openForm('/');
    await makeSheets(page);
    const letters = await page.locator('.lead svg .letter').allTextContents();
    const rows = await page.locator('.work .rows b').allTextContents();
    expect(letters.map((letter) => letter.trim()).join('')).toBe(rows.join('').replaceAll(' ', ''));
    const [first] = await readPdfPaths(await page.pdf({ format: 'A4' }));
    const printed = (first?.text ?? '').split(/\s+/).filter((word) => /^[A-D]$/.test(word));
    expect(printed.length).toBeGreaterThanOrEqual(letters.length);
  });

  test.each([
    ['es', 'Hoja para un taller', 'Imprimir dos páginas', 'Ten cuidado'],
    ['de', 'Blatt für einen Kurs', 'Zwei Seiten drucken', 'Gib acht'],
    ['fr', 'Fiche pour un cours', 'Imprimer deux pages', 'Attention'],
  ])('fits its two pages in %s too', async (language, opens, prints, said) => {
    const page = await open(PLANS['a queen']);
    await page.locator('ragbloom-plan').evaluate((element, lang) => {
      element.setAttribute('lang', lang);
      globalThis.print = () => {};
    }, language);
    await page.getByRole('button', { name: opens }).click();
    await page.getByRole('button', { name: prints }).click();
    await page.locator('.hand-out').waitFor({ state: 'attached' });
    const over = await page
      .locator('.leaf')
      .evaluateAll((leaves) => leaves.map((leaf) => leaf.scrollHeight - leaf.clientHeight));
    expect(over).toEqual([0, 0]);
    const pages = await readPdfPaths(await page.pdf({ format: 'Letter' }));
    expect(pages).toHaveLength(2);
    expect(read(pages)).toContain(said);
    expect(read(pages)).not.toMatch(/Take care|Join row to row|pupil/);
  });

  test('prints a second time, for another class', async () => {
    const page = await openForm('/');
    await makeSheets(page, '3');
    await page.pdf({ format: 'A4' });
    await page.locator('.hand-out').waitFor({ state: 'detached' });
    await page.getByRole('button', { name: 'Hand-out for a class' }).click();
    await makeSheets(page, '1');
    expect(read(await readPdfPaths(await page.pdf({ format: 'A4' })))).toContain('buys, 1 pupil');
  });

  test('leaves the page to print as ever', async () => {
    const page = await openForm('/');
    await makeSheets(page);
    await page.pdf({ format: 'A4' });
    await page.locator('.hand-out').waitFor({ state: 'detached' });
    const text = read(await readPdfPaths(await page.pdf({ format: 'A4' })));
    expect(text).toContain('Buy and cut');
    expect(text).not.toContain('The class buys');
  });

  test.each<[string, View]>([
    ['at a desk', {}],
    ['on a phone in the dark', { width: 360, height: 740, dark: true }],
  ])('asks in a form in which axe finds nothing wrong %s', async (_case, view) => {
    const page = await openForm('/', view);
    await page.getByLabel('Pupils').fill('many');
    await page.getByRole('button', { name: 'Print two pages' }).click();
    await page.locator('#class-pupils-fault').waitFor();
    expect(await findViolations(page)).toEqual([]);
    const wide = await page
      .locator('dialog')
      .evaluate((form) => form.scrollWidth - form.clientWidth);
    expect(wide).toBe(0);
  });
});
