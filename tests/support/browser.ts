import { type Browser, type BrowserContext, chromium, type Page } from 'playwright-core';
import { afterAll, afterEach, beforeAll, expect } from 'vitest';
import { prepareChromium } from './chromium.ts';
import { useWorker } from './worker.ts';

/** How a page is looked at; what is left out is 1280 by 800, light, with scripts. */
export type View = {
  readonly width?: number;
  readonly height?: number;
  readonly dark?: boolean;
  readonly reducedMotion?: boolean;
  readonly forcedColors?: boolean;
  readonly javaScript?: boolean;
  readonly locale?: string;
  /** With a finger instead of a mouse. */
  readonly touch?: boolean;
  /** Errors that the test itself provokes: a page error or console error that has this in it is let pass. */
  readonly expected?: RegExp;
};

/** Starts a Chromium with web security on; close it when done. */
export async function launchBrowser(): Promise<Browser> {
  return chromium.launch(await prepareChromium());
}

/**
 * One worker and one Chromium for all the tests of a file: call it at the top of the file.
 *
 * @returns a function that opens a path of the site, or a whole address, in a fresh profile. After each
 * test its pages are closed, and the test fails if one of them threw, logged an error or met its policy.
 */
export function usePages(): (path: string, view?: View) => Promise<Page> {
  const worker = useWorker();
  const contexts: BrowserContext[] = [];
  const problems: string[] = [];
  let browser: Browser | undefined;
  beforeAll(async () => {
    browser = await launchBrowser();
  }, 60_000);
  afterAll(() => browser?.close());
  afterEach(async () => {
    await Promise.all(contexts.splice(0).map((context) => context.close()));
    expect(problems.splice(0)).toEqual([]);
  });
  return async (path, view = {}) => {
    if (browser === undefined) throw new Error('The browser runs only inside a test.');
    const context = await browser.newContext(describeContext(view));
    contexts.push(context);
    const page = await context.newPage();
    collectProblems(page, (text) => {
      if (view.expected === undefined || !view.expected.test(text)) problems.push(text);
    });
    await page.goto(new URL(path, worker.origin()).href);
    return page;
  };
}

function describeContext(view: View) {
  return {
    viewport: { width: view.width ?? 1280, height: view.height ?? 800 },
    colorScheme: view.dark === true ? 'dark' : 'light',
    reducedMotion: view.reducedMotion === true ? 'reduce' : 'no-preference',
    forcedColors: view.forcedColors === true ? 'active' : 'none',
    javaScriptEnabled: view.javaScript ?? true,
    locale: view.locale ?? 'en-US',
    hasTouch: view.touch ?? false,
    isMobile: view.touch ?? false,
  } as const;
}

/** Chromium logs each refusal of a content security policy as a console error. */
function collectProblems(page: Page, tell: (text: string) => void): void {
  page.on('pageerror', (error) => tell(`page error: ${error.message}`));
  page.on('console', (message) => {
    if (message.type() === 'error') tell(`console: ${message.text()}`);
  });
}
