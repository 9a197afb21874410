import { beforeEach, describe, expect, test } from 'vitest';
import { VERSION } from '../../client/embed/version.ts';
import { usePages } from '../support/browser.ts';
import { useHostPage } from '../support/host-page.ts';
import { OLDER, useOlderVersion } from '../support/older-version.ts';

const open = usePages();
const host = useHostPage();
const older = useOlderVersion();
const TAG = '<ragbloom-size embedded><a href="#">The size</a></ragbloom-size>';
const PART = 'ragbloom-size [part~="figures"]';

let home = '';
let script = '';
beforeEach(async () => {
  const page = await open('/health');
  home = new URL(page.url()).origin;
  script = `<script src="${home}/embed/v1.js" async></script>`;
});

/** Opens a page of somebody else, and keeps count of what it asks for. */
async function openHost(body: string, head = '') {
  const address = host.serve(body, head);
  const page = await open('about:blank');
  const asked: string[] = [];
  page.on('request', (request) => asked.push(request.url()));
  await page.goto(address);
  return { page, asked, address };
}

describe('one script brings the elements of a page of somebody else', () => {
  test.each([
    ['before the tag', (one: string) => [TAG, one]],
    ['after the tag', (one: string) => [`${TAG}${one}`, '']],
    ['twice', (one: string) => [`${one}${TAG}${one}`, one]],
    ['as a module', (one: string) => [TAG, one.replace(' async', ' type="module"')]],
    ['deferred', (one: string) => [TAG, one.replace(' async', ' defer')]],
    ['at once', (one: string) => [TAG, one.replace(' async', '')]],
  ] as const)('%s, and loads each file once', async (_, place) => {
    const [body = '', head = ''] = place(script);
    const { page, asked } = await openHost(body, head);
    await page.locator(PART).waitFor();
    const modules = asked.filter((url) => url.includes(`/embed/${VERSION}/`));
    expect(modules.length).toBeGreaterThan(1);
    expect(modules).toEqual([...new Set(modules)]);
    expect(modules.filter((url) => /\/(plan|wash|stash|kits)-/.test(url))).toEqual([]);
  });

  test('many of them, of several kinds, with one script', async () => {
    const { page, asked } = await openHost(
      `${TAG.repeat(3)}<ragbloom-wash embedded></ragbloom-wash>`,
      script,
    );
    await page.locator('ragbloom-wash [part~="figures"]').first().waitFor();
    await page.locator(PART).nth(2).waitFor();
    expect(asked.filter((url) => url.includes('/base-'))).toHaveLength(1);
  });

  test.each(['innerHTML', 'append', 'insertAdjacentHTML'])('put in later by %s', async (how) => {
    const { page, asked } = await openHost('<main></main>', script);
    await page.waitForLoadState('networkidle');
    expect(asked.filter((url) => url.includes(`/embed/${VERSION}/`))).toEqual([]);
    await page.evaluate(
      ([way, tag]) => {
        const main = document.querySelector('main');
        if (way === 'innerHTML') main?.setHTMLUnsafe(`<p>${tag}</p>`);
        else if (way === 'append') main?.append(document.createElement('ragbloom-size'));
        else main?.insertAdjacentHTML('beforeend', tag ?? '');
      },
      [how, TAG],
    );
    await page.locator(PART).waitFor();
  });

  test('by a script that a script put in', async () => {
    const { page } = await openHost(TAG);
    await page.evaluate((src) => {
      const made = document.createElement('script');
      made.src = src;
      document.head.append(made);
    }, `${home}/embed/v1.js`);
    await page.locator(PART).waitFor();
  });

  test('in two versions, of which the first stays and the other says so', async () => {
    const other = `<script src="${older(home)}/embed/v1.js"></script>`;
    const warnings: string[] = [];
    const page = await open('about:blank');
    page.on('console', (message) => {
      if (message.type() === 'warning') warnings.push(message.text());
    });
    await page.goto(host.serve(`${TAG}${other}${script.replace(' async', '')}`));
    await page.locator(PART).waitFor();
    expect(warnings).toEqual([
      `ragbloom-size is here in version ${OLDER}, so ${VERSION} is left out.`,
    ]);
  });

  test('keeps nothing, sets no cookie, and asks nobody else', async () => {
    const { page, asked, address } = await openHost(TAG, script);
    await page.locator(PART).waitFor();
    await page.waitForLoadState('networkidle');
    const others = asked.filter(
      (url) => ![home, new URL(address).origin].includes(new URL(url).origin),
    );
    expect(others.filter((url) => !url.startsWith('data:'))).toEqual([]);
    expect(await page.context().cookies()).toEqual([]);
    const kept = await page.evaluate(async () => [
      localStorage.length,
      sessionStorage.length,
      (await indexedDB.databases()).length,
      (await caches.keys()).length,
      (await navigator.serviceWorker?.getRegistrations())?.length ?? 0,
    ]);
    expect(kept).toEqual([0, 0, 0, 0, 0]);
  });
});

describe('a page that pins one version', () => {
  const pinned = (integrity: string) =>
    `<script src="${home}/embed/${VERSION}/embed.js" integrity="${integrity}" crossorigin async></script>`;
  const sign = async () => {
    const manifest = (await (await fetch(`${home}/embed/manifest.json`)).json()) as {
      readonly files: Readonly<Record<string, string>>;
    };
    return manifest.files[`/embed/${VERSION}/embed.js`] ?? '';
  };

  test('gets it by the hash that the manifest tells', async () => {
    const { page } = await openHost(TAG, pinned(await sign()));
    await page.locator(PART).waitFor();
  });

  test('keeps what stands in the tag where the hash of the script is another', async () => {
    const page = await open('about:blank', { expected: /integrity/ });
    await page.goto(host.serve(TAG, pinned(`sha384-${'A'.repeat(64)}`)));
    await page.waitForLoadState('networkidle');
    expect(await page.getByRole('link', { name: 'The size' }).isVisible()).toBe(true);
    expect(await page.evaluate(() => customElements.get('ragbloom-size'))).toBeUndefined();
  });

  test.each(['size', 'base'])('keeps it where %s-….js is not as it was made', async (name) => {
    const page = await open('about:blank', { expected: /integrity/ });
    await page.route(`**/${name}-*.js`, async (route) => {
      const response = await route.fetch();
      await route.fulfill({ response, body: `${await response.text()};globalThis.tampered=1` });
    });
    await page.goto(host.serve(TAG, pinned(await sign())));
    await page.waitForLoadState('networkidle');
    expect(await page.getByRole('link', { name: 'The size' }).isVisible()).toBe(true);
    expect(await page.evaluate(() => 'tampered' in globalThis)).toBe(false);
  });
});

test('files of a version may be kept for ever, and what changes with it for an hour', async () => {
  const manifest = (await (await fetch(`${home}/embed/manifest.json`)).json()) as {
    readonly version: string;
    readonly files: Readonly<Record<string, string>>;
  };
  expect(manifest.version).toBe(VERSION);
  expect(Object.keys(manifest.files).length).toBeGreaterThan(10);
  for (const [path, integrity] of Object.entries(manifest.files)) {
    const response = await fetch(home + path);
    expect(response.headers.get('cache-control')).toBe('public, max-age=31536000, immutable');
    expect(response.headers.get('access-control-allow-origin')).toBe('*');
    expect(response.headers.get('cross-origin-resource-policy')).toBe('cross-origin');
    const digest = await crypto.subtle.digest('SHA-384', await response.arrayBuffer());
    expect(integrity).toBe(`sha384-${Buffer.from(digest).toString('base64')}`);
  }
  for (const path of ['/embed/v1.js', '/embed/manifest.json']) {
    const { headers } = await fetch(home + path);
    expect(headers.get('cache-control')).toMatch(/max-age=3600\b/);
    expect(headers.get('access-control-allow-origin')).toBe('*');
  }
});
