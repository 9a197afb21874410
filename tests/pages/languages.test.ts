import type { Page } from 'playwright-core';
import { describe, expect, test } from 'vitest';
import { ELEMENTS as KNOWN } from '../../client/build/budgets.ts';
import { ENGLISH } from '../structure/language-rules.ts';
import { findViolations } from '../support/axe.ts';
import { usePages } from '../support/browser.ts';

const openPage = usePages();

/** A place in a question, such as `block.cut`: named as the service names it. */
const PLACE = /^\w+(\.\w+)+$/;

type Attributes = Readonly<Record<string, string>>;

/** Each element with a question whose answer has much to say; prices, locks and faults among it. */
const ELEMENTS: Readonly<Record<string, Attributes>> = {
  plan: {
    preset: 'unit=cm&target.width=100&target.height=130&block.seam=8 ells&block.cut=1,250',
  },
  wash: { preset: 'unit=cm&wanted.width=100&wanted.height=130' },
  size: { preset: 'target.size=cot', currency: 'EUR', locked: 'target' },
  yardage: { currency: 'EUR' },
  counter: {
    preset:
      'unit=cm&target.width=100&target.height=130&layers.0.role=top&layers.0.prints=3&layers.1.role=backing',
  },
  layout: {},
  compare: { preset: 'a=target.size%3Dthrow&b=target.size%3Dlap' },
};
const NAMES = Object.keys(ELEMENTS).filter((name) => KNOWN[name] !== undefined);

/** Puts an element alone into a page as narrow as any. */
async function place(name: string): Promise<Page> {
  // What is at fault in the preset of the plan is refused first.
  const page = await openPage('/', { width: 320, height: 740, expected: /422/ });
  await page.evaluate(
    ([tag, attributes]) => {
      const element = document.createElement(tag);
      for (const [key, value] of Object.entries(attributes)) element.setAttribute(key, value);
      element.toggleAttribute('embedded', true);
      const main = document.createElement('main');
      const heading = document.createElement('h1');
      heading.textContent = 'Ragbloom';
      main.append(heading, element);
      document.body.replaceChildren(main);
    },
    [`ragbloom-${name}`, ELEMENTS[name] ?? {}] as const,
  );
  return page;
}

/** Has the element speak a language, and waits until its words have changed and come to rest. */
async function speak(page: Page, language: string): Promise<void> {
  await page.evaluate((lang) => {
    document.documentElement.lang = lang;
    const element = document.querySelector('main')?.lastElementChild;
    Reflect.set(globalThis, 'first', element?.shadowRoot?.textContent ?? '');
    element?.setAttribute('lang', lang);
  }, language);
  const isAtRest = () => {
    const root = document.querySelector('main')?.lastElementChild?.shadowRoot;
    const text = root?.textContent ?? '';
    const [first, before] = ['first', 'before'].map((key) => Reflect.get(globalThis, key));
    Reflect.set(globalThis, 'before', text);
    const isBusy = root?.querySelector('[aria-busy=true]') ?? false;
    return text === before && text !== first && text.length > 200 && !isBusy;
  };
  await page.waitForFunction(isAtRest, undefined, { polling: 700 });
}

/** What stands out of the page, and all that is said and not marked as English. */
function look(page: Page) {
  return page.evaluate(() => {
    const root = document.querySelector('main')?.lastElementChild?.shadowRoot as ShadowRoot;
    for (const fold of root.querySelectorAll('details')) fold.open = true;
    const wide = [...root.querySelectorAll('*')]
      .filter((one) => !one.closest('svg,.hidden,[tabindex="0"]'))
      .filter((one) => one.getBoundingClientRect().right > innerWidth + 1)
      .map((one) => `${one.localName} ${one.textContent?.trim().slice(0, 60)}`);
    const said: string[] = [];
    const walker = document.createTreeWalker(root, NodeFilter.SHOW_TEXT);
    for (let node = walker.nextNode(); node !== null; node = walker.nextNode()) {
      const isOurs = !node.parentElement?.closest('[lang=en],style,svg');
      if (isOurs) said.push(node.nodeValue?.trim() ?? '');
    }
    for (const one of root.querySelectorAll('[aria-label],[placeholder]')) {
      said.push(one.getAttribute('aria-label') ?? '', one.getAttribute('placeholder') ?? '');
    }
    return { wide, said: said.filter((text) => text !== '') };
  });
}

describe('every element in every language', () => {
  test.each(NAMES)(
    '%s fits 320 px with all unfolded, is as accessible, and has no English that is not marked',
    async (name) => {
      const page = await place(name);
      for (const language of ['es', 'de', 'fr', 'en']) {
        await speak(page, language);
        const { wide, said } = await look(page);
        expect(wide, language).toEqual([]);
        expect(said.length, language).toBeGreaterThan(10);
        const odd = said.filter((text) => ENGLISH.test(text) && !PLACE.test(text));
        expect(language === 'en' ? [] : odd, language).toEqual([]);
        expect(await findViolations(page), language).toEqual([]);
      }
    },
    90_000,
  );
});
