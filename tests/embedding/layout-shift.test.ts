import { expect, test } from 'vitest';
import { startState } from '../../client/maker/maker-state.ts';
import { MAKER_VIEWS } from '../../client/maker/maker-views.ts';
import { writeSnippets } from '../../client/maker/write-snippets.ts';
import { usePages } from '../support/browser.ts';
import { useHostPage } from '../support/host-page.ts';

const open = usePages();
const host = useHostPage();
const LATE = 3000;
const WIDTHS = [320, 768, 1280];

/** What of the page moved, by the sum of all shifts that nobody asked for (Layout Instability, W3C). */
async function sumShifts(name: string, width: number): Promise<number> {
  const page = await open('/health', { width, height: width < 500 ? 740 : 800 });
  const home = new URL(page.url()).origin;
  const { script } = writeSnippets(startState(name), home);
  await page.route('**/embed/v1.js', async (route) => {
    await new Promise((done) => setTimeout(done, LATE));
    await route.continue();
  });
  await page.addInitScript(() => {
    const shifts: number[] = [];
    Object.assign(globalThis, { shifts });
    new PerformanceObserver((list) => {
      for (const entry of list.getEntries()) {
        shifts.push((entry as PerformanceEntry & { readonly value: number }).value);
      }
    }).observe({ type: 'layout-shift', buffered: true });
  });
  const around = '<p>Some words of the shop about the kit.</p>';
  const head = '<meta name="viewport" content="width=device-width, initial-scale=1">';
  await page.goto(host.serve(`${around}${script}${around.repeat(5)}`, head), {
    waitUntil: 'commit',
  });
  await page.locator(`ragbloom-${name} [part~="figures"]`).first().waitFor();
  await page.waitForLoadState('networkidle');
  const shifts = await page.evaluate(() => (globalThis as unknown as { shifts: number[] }).shifts);
  return shifts.reduce((sum, shift) => sum + shift, 0);
}

test.each(MAKER_VIEWS)(
  'the snippet of $name, its script 3 s late, moves next to nothing at 320, 768 and 1280 px',
  async ({ name }) => {
    const sums = await Promise.all(WIDTHS.map((width) => sumShifts(name, width)));
    expect(sums).toHaveLength(WIDTHS.length);
    expect(Math.max(...sums)).toBeLessThanOrEqual(0.01);
  },
);
