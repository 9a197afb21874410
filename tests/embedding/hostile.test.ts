import type { Page } from 'playwright-core';
import { beforeEach, describe, expect, test } from 'vitest';
import { usePages } from '../support/browser.ts';
import { useHostPage } from '../support/host-page.ts';

const open = usePages();
const host = useHostPage();
const NAMES = ['size', 'yardage', 'wash', 'plan'] as const;

let home = '';
beforeEach(async () => {
  home = new URL((await open('/health')).url()).origin;
});
const scriptFrom = (origin: string) => `<script src="${origin}/embed/v1.js" async></script>`;
const settle = async (page: Page, name: string) => {
  await page.locator(`ragbloom-${name} [part~="figures"]`).first().waitFor();
  await page.waitForLoadState('networkidle');
};

/** Where every box of an element that takes room lies, seen from its own corner. */
function measure(page: Page, name: string): Promise<readonly (readonly number[])[]> {
  return page.locator(`ragbloom-${name} .whole`).evaluate((whole) => {
    const { left, top } = whole.getBoundingClientRect();
    const parts = [whole, ...whole.querySelectorAll('*')];
    return parts.map((part) => {
      const { x, y, width, height } = part.getBoundingClientRect();
      const isShown = width > 0 && height > 0;
      return isShown ? [x - left, y - top, width, height] : [0, 0, 0, 0];
    });
  });
}

describe('the styles of a page', () => {
  const HOSTILE = `<style>html{font-size:62.5%}*{all:unset;box-sizing:content-box}*::before,*::after{content:"x"}
    head,style,script,title,link,meta{display:none}body,main{display:block}body{font-size:16px;font-family:sans-serif}main{width:700px}
    main *{letter-spacing:.2em;text-transform:uppercase;line-height:3;font-style:italic;font-weight:700;text-align:right;white-space:pre;text-indent:2em;word-spacing:1em}
    p,a,input,button,h2,table,td,label{margin:30px;padding:20px;border:9px solid;float:left;position:relative}</style>`;
  const PLAIN = '<style>body{font-size:16px;font-family:sans-serif}main{width:700px}</style>';

  test.each(NAMES)('move no box of ragbloom-%s by more than a pixel', async (name) => {
    const body = `<main><ragbloom-${name} embedded></ragbloom-${name}></main>`;
    const boxes: (readonly (readonly number[])[])[] = [];
    for (const style of [PLAIN, HOSTILE]) {
      const page = await open('about:blank');
      await page.goto(host.serve(body, style + scriptFrom(home)));
      await settle(page, name);
      boxes.push(await measure(page, name));
    }
    const [plain = [], hostile = []] = boxes;
    expect(hostile.length).toBe(plain.length);
    expect(plain.length).toBeGreaterThan(30);
    const moved = plain.map((box, at) =>
      Math.max(...box.map((side, edge) => Math.abs(side - (hostile[at]?.[edge] ?? 0)))),
    );
    expect(Math.max(...moved)).toBeLessThanOrEqual(1);
  });

  test.each(NAMES)('stay as they are for all that is beside ragbloom-%s', async (name) => {
    const body = `<p id="own">Ours</p><main><ragbloom-${name} embedded></ragbloom-${name}></main>`;
    const page = await open('about:blank');
    await page.goto(host.serve(body));
    const before = await page.locator('#own').boundingBox();
    await page.goto(host.serve(body, scriptFrom(home)));
    await settle(page, name);
    expect(await page.locator('#own').boundingBox()).toEqual(before);
    const added = await page.evaluate(() => [
      document.querySelectorAll('style').length,
      document.adoptedStyleSheets.length,
      document.querySelectorAll('[id]').length,
    ]);
    expect(added).toEqual([0, 0, 1]);
  });
});

describe('a strict policy', () => {
  test.each([...NAMES, 'stash', 'kits'])('is kept by ragbloom-%s', async (name) => {
    const policy = `default-src 'none'; script-src ${home}; style-src 'self'; connect-src ${home}; img-src data:; require-trusted-types-for 'script'; trusted-types lit-html`;
    const meta = `<meta http-equiv="Content-Security-Policy" content="${policy}">`;
    const page = await open('about:blank');
    await page.addInitScript(() => {
      const met: string[] = [];
      Object.assign(globalThis, { met });
      addEventListener('securitypolicyviolation', (event) => met.push(event.violatedDirective));
    });
    const pinned = `<script src="${home}/embed/1.0.0/embed.js" async></script>`;
    for (const script of [scriptFrom(home), pinned]) {
      await page.goto(host.serve(`<ragbloom-${name} embedded></ragbloom-${name}>`, meta + script));
      await settle(page, name);
      await page.locator(`ragbloom-${name} input[type=text]`).first().fill('41');
      await page.waitForLoadState('networkidle');
      expect(await page.evaluate(() => (globalThis as unknown as { met: string[] }).met)).toEqual(
        [],
      );
    }
  });
});
