import type { Page } from 'playwright-core';
import { expect } from 'vitest';

/** Pastes a text at the cell that has the focus, as a spreadsheet hands it over. */
export async function pasteText(page: Page, tag: string, text: string): Promise<void> {
  await page.evaluate(
    ([name, pasted]) => {
      const focused = document.querySelector(name ?? '')?.shadowRoot?.activeElement;
      const clipboardData = new DataTransfer();
      clipboardData.setData('text/plain', pasted ?? '');
      const options = { clipboardData, bubbles: true, composed: true, cancelable: true };
      focused?.dispatchEvent(new ClipboardEvent('paste', options));
    },
    [tag, text] as const,
  );
}

/** Chooses a file made of a text. */
export async function openFile(page: Page, text: string, name = 'cloth.csv'): Promise<void> {
  const file = { name, mimeType: 'text/csv', buffer: Buffer.from(text) };
  await page.locator('input[type=file]').setInputFiles(file);
}

/** Saves the table and reads the file that the browser was handed. */
export async function saveFile(page: Page): Promise<string> {
  const [download] = await Promise.all([
    page.waitForEvent('download'),
    page.getByRole('button', { name: 'Save CSV' }).click(),
  ]);
  const chunks: Buffer[] = [];
  for await (const chunk of await download.createReadStream()) chunks.push(Buffer.from(chunk));
  return Buffer.concat(chunks).toString('utf8');
}

/** The cells of the table as they stand in its fields, a row a line. */
export async function readTable(page: Page): Promise<readonly string[]> {
  const rows = await page.locator('.cloths tbody tr').all();
  return Promise.all(
    rows.map(async (row) => {
      const cells = await row.locator('input, select').all();
      return (await Promise.all(cells.map((cell) => cell.inputValue()))).join('|');
    }),
  );
}

/** Waits until the figures on the page are those of what was typed. */
export async function settlePage(page: Page, tag: string): Promise<void> {
  await expect.poll(() => page.locator(`${tag} .table`).count()).toBe(1);
  await page.waitForTimeout(400);
  await page.locator(`${tag} .busy`).waitFor({ state: 'detached' });
}

/** Every target that is smaller than a finger on the page. */
export async function findSmall(page: Page): Promise<readonly string[]> {
  const targets = await page
    .locator('button, select, input[type=text], .chip, .check, summary, a.go')
    .all();
  const boxes = await Promise.all(
    targets.map(
      async (target) => [await target.boundingBox(), await target.textContent()] as const,
    ),
  );
  expect(boxes.length).toBeGreaterThan(20);
  return boxes.flatMap(([box, text]) =>
    box !== null && Math.min(box.width, box.height) < 43.9
      ? [`${text?.trim()} ${box.width} × ${box.height}`]
      : [],
  );
}
