import { expect, test } from 'vitest';
import { findViolations } from '../support/axe.ts';
import { usePages } from '../support/browser.ts';

const open = usePages();

test.each([
  { width: 360, dark: true },
  { width: 1280, javaScript: true },
])(
  'the page /api opens at %j with nothing that axe finds wrong and nothing to scroll sideways',
  async (view) => {
    const page = await open('/api', view);
    expect(await page.title()).toBe('The API – Ragbloom');
    expect(await findViolations(page)).toEqual([]);
    const wide = await page.evaluate(
      () => document.documentElement.scrollWidth - document.documentElement.clientWidth,
    );
    expect(wide).toBe(0);
  },
);

test('a form of /api asks without a script, and the browser shows the answer', async () => {
  const page = await open('/api', { width: 360, javaScript: false });
  await page.locator('form[action="/v1/plan"] input[name="target.width"]').fill('60');
  await page.locator('form[action="/v1/plan"] button').click();
  await page.waitForURL(/\/v1\/plan\?target\.width=60/);
  expect(await page.locator('body').textContent()).toContain('"engine"');
});
