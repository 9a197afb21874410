/**
 * Draws the icons of the installed page from `client/pages/icon.svg`, by a browser: `node tests/support/write-icons.ts`.
 */
import { readFile, writeFile } from 'node:fs/promises';
import { chromium } from 'playwright-core';
import { prepareChromium } from './chromium.ts';

/** Widths that an installed page asks for, in pixels. */
export const ICON_SIDES: readonly number[] = [192, 512];

const pages = new URL('../../client/pages/', import.meta.url);

/** The icon in one width, as the bytes of a PNG. */
export async function drawIcon(side: number): Promise<Uint8Array> {
  const svg = await readFile(new URL('icon.svg', pages), 'utf8');
  const browser = await chromium.launch(await prepareChromium());
  try {
    const page = await browser.newPage({ viewport: { width: side, height: side } });
    await page.setContent(
      `<body style="margin:0">${svg.replace('<svg', '<svg style="display:block"')}`,
    );
    return await page.screenshot();
  } finally {
    await browser.close();
  }
}

if (import.meta.main) {
  for (const side of ICON_SIDES) {
    await writeFile(new URL(`icon-${side}.png`, pages), await drawIcon(side));
  }
}
