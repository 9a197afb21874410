import { afterAll, describe, expect, test } from 'vitest';
import { type Hosts, serveHosts } from '../../api/serve-hosts.ts';
import { usePages, type View } from '../support/browser.ts';

const open = usePages();
let hosts: Hosts | undefined;
afterAll(() => hosts?.stop());

/** A page of the invented shop or blog, which embeds the service as it now runs. */
async function visit(path: string, view?: View) {
  const page = await open('/health', view);
  hosts ??= await serveHosts(new URL(page.url()).origin, 0);
  await page.goto(hosts.origin + path);
  return page;
}

describe('the shop', () => {
  test('hears of each size, and its form sends the canonical query along', async () => {
    const page = await visit('/shop');
    const kit = page.locator('#kit');
    await expect
      .poll(() => kit.textContent())
      .toMatch(/^42 blocks: .* Heron dot, .* Oat sprig, .* backing$/);
    await page.getByRole('textbox', { name: /^Width/ }).fill('40');
    await expect.poll(() => kit.textContent()).not.toMatch(/^42 blocks/);
    await page.getByRole('button', { name: 'Put into the cart' }).click();
    const sent = await page.locator('#sent').textContent();
    expect(sent).toMatch(/^plan: target\.width=40&target\.height=60&block\.cut=10&/);
    expect(sent).toContain('count: 1');
  });
  test('gets its own size back when its form is reset', async () => {
    const page = await visit('/shop');
    const kit = page.locator('#kit');
    await expect.poll(() => kit.textContent()).toMatch(/^42 blocks/);
    await page.getByRole('textbox', { name: /^Width/ }).fill('40');
    await expect.poll(() => kit.textContent()).not.toMatch(/^42 blocks/);
    await page.getByRole('button', { name: 'Start again' }).click();
    await expect.poll(() => kit.textContent()).toMatch(/^42 blocks/);
  });
  test('has its own link where no script runs', async () => {
    const page = await visit('/shop', { javaScript: false });
    await page.getByRole('link', { name: 'See what is in it' }).click();
    expect(await page.getByRole('row', { name: /^Cut each block/ }).textContent()).toContain(
      '10 in',
    );
  });
});

describe('the tutorial', () => {
  test('has an element, a frame in a sandbox and a picture, all under a strict policy', async () => {
    const page = await visit('/tutorial');
    await page.locator('ragbloom-wash [part=figures]').first().waitFor();
    const frame = page.frameLocator('iframe').locator('ragbloom-yardage [part=figures]');
    await page.locator('iframe').scrollIntoViewIfNeeded();
    expect(await frame.textContent()).toContain('1¼');
    const picture = page.getByRole('img', { name: 'A rag quilt of 5 by 6 blocks' });
    expect(await picture.evaluate((one: HTMLImageElement) => one.naturalWidth)).toBeGreaterThan(0);
  });
});

describe('hostile styles', () => {
  /** The boxes of what is inside an element, from its own left and top edge. */
  const measure = (tag: string) => {
    const element = document.querySelector(tag);
    const root = element?.shadowRoot;
    if (!element || !root) throw new Error('There is no such element.');
    const { left, top } = element.getBoundingClientRect();
    return [...root.querySelectorAll('*')].map((one) => {
      const box = one.getBoundingClientRect();
      // What does not show has no place at all.
      const place = box.width + box.height === 0 ? [0, 0] : [box.left - left, box.top - top];
      return [one.localName, ...place, box.width, box.height] as const;
    });
  };
  test('move no box of the calculator in the shop by more than a pixel', async () => {
    const boxes = async (path: string) => {
      const page = await visit(path);
      // As wide and in the same type on either page: what is inherited on purpose is not what is tried.
      await page.addStyleTag({ url: '/even.css' });
      await page.locator('ragbloom-size [part=figures]').waitFor();
      return page.evaluate(measure, 'ragbloom-size');
    };
    const [calm, hostile] = [await boxes('/shop?even'), await boxes('/shop?css=hostile')];
    expect(hostile.length).toBe(calm.length);
    const moved = calm.filter((box, at) =>
      [1, 2, 3, 4].some((side) => Math.abs(Number(box[side]) - Number(hostile[at]?.[side])) > 1),
    );
    expect(moved).toEqual([]);
  });
});
