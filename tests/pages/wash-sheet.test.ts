import type { Page } from 'playwright-core';
import { describe, expect, test } from 'vitest';
import { usePages } from '../support/browser.ts';
import { type PrintedPage, readPdfPaths } from '../support/read-pdf-paths.ts';

const open = usePages();

/** How far a mark may be off on paper, mm. */
const OFF = 0.2;
/** The arms of a cross together, mm. */
const CROSS = 5;
/** US Letter 8.5 by 11 in; A4 by ISO 216. */
const PAPERS = { Letter: [215.9, 279.4], A4: [210, 297] } as const;

async function printSheet(
  page: Page,
  format: keyof typeof PAPERS,
): Promise<readonly PrintedPage[]> {
  await page.locator('ragbloom-wash .result').first().waitFor();
  await page.evaluate(() => {
    globalThis.print = () => {};
  });
  await page.getByRole('button', { name: 'Print a swatch sheet' }).click();
  return readPdfPaths(await page.pdf({ format }));
}

const isNear = (value: number, wanted: number) => Math.abs(value - wanted) <= OFF;

/** The centres of the crosses, mm. */
function findCrosses({ paths }: PrintedPage) {
  return paths
    .filter(({ width, height }) => isNear(width, CROSS) && isNear(height, CROSS))
    .map(({ x, y, width, height }) => ({ x: x + width / 2, y: y + height / 2 }));
}

describe.each([
  ['/wash', 7 * 25.4, '7 in apart'],
  ['/wash?unit=cm', 180, '18 cm apart'],
] as const)('the sheet of %s', (path, marks, said) => {
  test.each(['Letter', 'A4'] as const)(
    'carries its marks true to scale on one sheet of %s',
    async (format) => {
      const pages = await printSheet(await open(path), format);
      expect(pages.length).toBe(1);
      const [sheet] = pages;
      if (sheet === undefined) throw new Error('Nothing was printed.');
      const [width, height] = PAPERS[format];
      expect(sheet.width).toBeCloseTo(width, 0);
      expect(sheet.height).toBeCloseTo(height, 0);

      const crosses = findCrosses(sheet);
      expect(crosses.length).toBe(12);
      const inOrder = (values: readonly number[]) => values.toSorted((one, other) => one - other);
      const xs = inOrder(crosses.map(({ x }) => x));
      const ys = inOrder(crosses.map(({ y }) => y));
      // Three stand at each end each way, and each has its fellow straight across.
      for (const ends of [xs, ys]) {
        for (const index of [0, 1, 2]) {
          const apart = (ends.at(-1 - index) ?? 0) - (ends[index] ?? 0);
          expect(Math.abs(apart - marks), `${apart} mm`).toBeLessThanOrEqual(OFF);
        }
      }
      const fellows = crosses.map((cross) =>
        crosses.filter(
          ({ x, y }) =>
            (isNear(Math.abs(x - cross.x), marks) && isNear(y, cross.y)) ||
            (isNear(Math.abs(y - cross.y), marks) && isNear(x, cross.x)),
        ),
      );
      expect(fellows.map((found) => found.length)).toEqual(crosses.map(() => 1));
      // Nothing may come nearer the edge than most printers reach.
      expect((xs[0] ?? 0) - CROSS / 2).toBeGreaterThan(6);
      expect(width - (xs.at(-1) ?? 0) - CROSS / 2).toBeGreaterThan(6);
      expect(sheet.text).toContain(said);
    },
  );

  test('has two lines to check the print by, 5 cm and 2 in', async () => {
    const [sheet] = await printSheet(await open(path), 'A4');
    const lines = (sheet?.paths ?? []).filter(({ height }) => height < OFF);
    expect(lines.filter(({ width }) => Math.abs(width - 50) <= OFF).length).toBe(1);
    expect(lines.filter(({ width }) => Math.abs(width - 50.8) <= OFF).length).toBe(1);
    expect(sheet?.text).toContain('Print at 100 %. Measure this line');
  });
});

test('the page itself comes back once the sheet is printed', async () => {
  const page = await open('/wash');
  await printSheet(page, 'A4');
  await expect.poll(() => page.locator('ragbloom-wash .swatch-sheet').count()).toBe(0);
  const pages = await readPdfPaths(await page.pdf({ format: 'A4' }));
  expect(pages.map(({ text }) => text).join(' ')).toContain('How the layers get on');
  expect(pages.map(({ text }) => text).join(' ')).not.toContain('Print a swatch sheet');
  expect(pages.length).toBeLessThanOrEqual(3);
});

test('a sheet printed at another size is found out', async () => {
  const page = await open('/wash?unit=cm');
  await printSheet(page, 'A4');
  await page.evaluate(() => {
    globalThis.print = () => {};
  });
  await page.getByRole('button', { name: 'Print a swatch sheet' }).click();
  const [sheet] = await readPdfPaths(await page.pdf({ format: 'A4', scale: 0.97 }));
  expect(sheet === undefined ? 0 : findCrosses(sheet).length).toBe(12);
  const xs = (sheet === undefined ? [] : findCrosses(sheet)).map(({ x }) => x);
  expect(Math.max(...xs) - Math.min(...xs)).toBeLessThan(180 - OFF);
});
