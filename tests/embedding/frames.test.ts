import type { Frame, Page } from 'playwright-core';
import { describe, expect, test } from 'vitest';
import { VIEWS } from '../../api/pages/views.ts';
import { ELEMENTS } from '../../client/build/budgets.ts';
import { findViolations } from '../support/axe.ts';
import { usePages, type View } from '../support/browser.ts';
import { filterEmbed } from '../support/filter-embed.ts';
import { useHostPage } from '../support/host-page.ts';

const open = usePages();
const host = useHostPage();

/** A foreign page with this in its body, and the frame in it once there is one. */
async function openHost(write: (home: string) => string, view: View = {}) {
  const page = await open('/health', view);
  const home = new URL(page.url()).origin;
  await page.goto(host.serve(write(home), LISTENER));
  return { page, home, frame: await findFrame(page) };
}

/** Keeps all that frames post to the page. */
const LISTENER =
  '<script>heard = []; addEventListener("message", ({ data }) => heard.push(data));</script>';
const listHeard = (page: Page) =>
  page.evaluate(() => (globalThis as unknown as { heard: Record<string, unknown>[] }).heard);

async function findFrame(page: Page): Promise<Frame> {
  const frame = await (await page.waitForSelector('iframe')).contentFrame();
  if (frame === null) throw new Error('The page has no frame.');
  return frame;
}

const tagOf = (attributes: string, path: string) => (home: string) =>
  `<iframe src="${home}/embed/${path}" width="700" height="700" title="A frame" ${attributes}></iframe>`;

const SANDBOX = 'sandbox="allow-scripts"';

describe('a frame in a sandbox without an origin', () => {
  test('reckons as typed, keeps nothing and asks nobody else', async () => {
    const asked: string[] = [];
    const page = await open('/health');
    page.on('request', (request) => asked.push(new URL(request.url()).host));
    const home = new URL(page.url()).origin;
    await page.goto(host.serve(tagOf(SANDBOX, 'size?target.width=40&target.height=50')(home)));
    const frame = await findFrame(page);
    const figures = frame.locator('ragbloom-size [part=figures]');
    await figures.waitFor();
    expect(await frame.evaluate(() => origin)).toBe('null');
    const before = await figures.textContent();
    await frame.getByRole('textbox', { name: /^Width/ }).fill('60');
    await expect.poll(() => figures.textContent(), { timeout: 10_000 }).not.toBe(before);
    expect(await page.context().cookies()).toEqual([]);
    expect([...new Set(asked)].toSorted()).toEqual(
      [new URL(home).host, new URL(page.url()).host].toSorted(),
    );
  });

  test.each(VIEWS.map(({ name }) => name).filter((name) => Object.hasOwn(ELEMENTS, name)))(
    '%s answers without an error, and tells the page around',
    async (name) => {
      const { page, frame } = await openHost(tagOf(SANDBOX, name));
      await frame.locator(`ragbloom-${name}:defined`).waitFor({ state: 'attached' });
      const answers = async () =>
        (await listHeard(page)).filter(
          ({ type, view }) => type === 'ragbloom-answer' && view === name,
        );
      await expect
        .poll(async () => (await answers()).length, { timeout: 15_000 })
        .toBeGreaterThan(0);
      expect((await answers())[0]?.['query']).toMatch(/=/);
    },
    40_000,
  );

  test('holds a lock and speaks the language it was given', async () => {
    const { frame } = await openHost(
      tagOf(SANDBOX, 'plan?target.size=lap&block.cut=8&_locked=block&_lang=de'),
    );
    const cut = frame.locator('ragbloom-plan');
    await cut.locator('[part=figures]').waitFor();
    expect(await frame.locator('html').getAttribute('lang')).toBe('de');
    await expect
      .poll(() => cut.locator('[part=wish]').textContent())
      .toMatch(/Breite|Größe|Wunsch/);
  });
});

describe('the height of a frame', () => {
  test.each([280, 700, 1200])('leaves nothing to scroll at %d pixels of width', async (width) => {
    const { page, frame } = await openHost(tagOf(SANDBOX, 'size?target.size=throw'));
    await page.setViewportSize({ width: 1280, height: 900 });
    await page.locator('iframe').evaluate((one, to) => one.setAttribute('width', `${to}`), width);
    await frame.locator('ragbloom-size [part=figures]').waitFor();
    const fit = async () => {
      const told = (await listHeard(page)).filter(({ type }) => type === 'ragbloom-height').at(-1);
      await page
        .locator('iframe')
        .evaluate((one, to) => one.setAttribute('height', `${to}`), told?.['height']);
      return frame.evaluate(() => {
        const { scrollHeight, clientHeight, scrollWidth, clientWidth } = document.documentElement;
        return [scrollHeight - clientHeight, scrollWidth - clientWidth];
      });
    };
    await expect.poll(fit, { timeout: 10_000 }).toEqual([0, 0]);
  });
});

describe('a blog that filters all but a bare frame', () => {
  test('keeps a calculator that works and tells its height within what the blog takes', async () => {
    const page = await open('/health');
    const home = new URL(page.url()).origin;
    const pasted = `${home}/?target.width=40&target.height=50`;
    const answer = await page.request.get(
      `${home}/oembed?url=${encodeURIComponent(pasted)}&maxwidth=500`,
    );
    const { html } = (await answer.json()) as { html: string };
    const kept = filterEmbed(html, 'aB3dE5gH7j') ?? '';
    expect(kept).toContain('width="500"');
    await page.goto(host.serve(kept, LISTENER));
    const frame = await findFrame(page);
    const figures = frame.locator('ragbloom-plan [part=figures]');
    await figures.waitFor();
    expect(await figures.textContent()).toMatch(/4 × 5|4 by 5|20/);
    const heights = async () =>
      (await listHeard(page)).filter(
        ({ secret, message }) => secret === 'aB3dE5gH7j' && message === 'height',
      );
    await expect.poll(async () => (await heights()).length).toBeGreaterThan(0);
    for (const { value } of await heights()) {
      expect(value).toBeGreaterThanOrEqual(200);
      expect(value).toBeLessThanOrEqual(1000);
    }
  });
  test('filterEmbed keeps nothing but a frame, and of two none', () => {
    expect(filterEmbed('<p>a</p><script></script>', 'a')).toBeUndefined();
    expect(filterEmbed('<iframe src="a"></iframe><iframe src="b"></iframe>', 'a')).toBeUndefined();
    expect(
      filterEmbed('<b></b><iframe src="a" onload="x" style="y" title="t"></iframe>', 's'),
    ).toBe(
      '<iframe class="wp-embedded-content" sandbox="allow-scripts" security="restricted" data-secret="s" src="a#?secret=s" title="t"></iframe>',
    );
  });
});

describe('a frame without scripts', () => {
  test('shows the result, its drawing, and a form that asks again in the frame', async () => {
    const { frame } = await openHost(tagOf('', 'size?target.width=40&target.height=50'), {
      javaScript: false,
    });
    const row = frame.getByRole('row', { name: /^Blocks/ });
    expect(await row.textContent()).toContain('20: 4 across, 5 down');
    const drawing = frame.locator('img');
    expect(await drawing.evaluate((image: HTMLImageElement) => image.naturalWidth)).toBeGreaterThan(
      0,
    );
    await frame.getByLabel('Width').fill('60');
    await frame.getByRole('button', { name: 'Ask again' }).click();
    await expect.poll(() => row.textContent()).not.toContain('4 across');
  });
  test('shows the result even in a sandbox that lets nothing run', async () => {
    const { frame } = await openHost(tagOf('sandbox', 'yardage'), {
      expected: /Blocked script execution/,
    });
    expect(await frame.getByRole('row', { name: /^Buy/ }).textContent()).toContain('1 1/4 yd');
  });
});

describe('what is wrong', () => {
  test.each([
    ['size?target.width=x&target.height=50', 'which is no length'],
    ['nothing', 'There is no such view to embed'],
  ])('is said in the frame: %s', async (path, words) => {
    const { frame } = await openHost(tagOf('', path), {
      javaScript: false,
      expected: /status of 4/,
    });
    expect(await frame.locator('body').textContent()).toContain(words);
  });
});

describe('a frame alone', () => {
  test.each([
    ['/embed/size?target.size=throw', 'as it is'],
    ['/embed/size?target.size=throw', 'without its scripts'],
    ['/embed/wash', 'without its scripts'],
    ['/embed/plan?target.width=x', 'without its scripts'],
  ])('%s, %s, breaks no rule of axe and is not wider than a phone', async (path, how) => {
    const page = await open('/health', {
      width: 320,
      height: 640,
      expected: /status of 422|ERR_FAILED/,
    });
    const isWhole = how === 'as it is';
    if (!isWhole) await page.route('**/*.js', (route) => route.abort());
    await page.goto(new URL(path, page.url()).href);
    await page.locator(isWhole ? 'ragbloom-size [part=figures]' : '.told').waitFor();
    expect(await page.evaluate(() => document.documentElement.scrollWidth)).toBeLessThanOrEqual(
      320,
    );
    expect(await findViolations(page)).toEqual([]);
  });
  test('has the look that it was given', async () => {
    const page = await open('/embed/size?target.size=throw&_ground=112233&_scheme=dark');
    await page.locator('ragbloom-size [part=figures]').waitFor();
    expect(
      await page.evaluate(() => getComputedStyle(document.documentElement).backgroundColor),
    ).toBe('rgb(17, 34, 51)');
    expect(await page.evaluate(() => getComputedStyle(document.documentElement).colorScheme)).toBe(
      'dark',
    );
  });
});
