import { afterEach, beforeEach, describe, expect, test, vi } from 'vitest';
import * as onDevice from '../../../../client/data/yardage-on-device.ts';
import {
  type YardageDetail,
  YardageElement,
} from '../../../../client/elements/yardage/yardage-element.ts';
import { answerAs, serve } from '../../../support/answering.ts';
import { findBrokenRules } from '../../../support/find-broken-rules.ts';
import { find, readText, type } from '../../../support/render.ts';

const sound = answerAs(onDevice.computeYardage);
/** The cloth of the README: 42 squares of 8½ in, two yards on the bolt. */
const CLOTH =
  'fabrics.0.id=Fog&amp;fabrics.0.width=42&amp;fabrics.0.lengthLeft=2 yd&amp;fabrics.0.pieces.0.id=A&amp;fabrics.0.pieces.0.width=8 1/2&amp;fabrics.0.pieces.0.length=8 1/2&amp;fabrics.0.pieces.0.count=42';

async function open(markup = '<ragbloom-yardage></ragbloom-yardage>'): Promise<YardageElement> {
  document.body.innerHTML = markup;
  const element = find<YardageElement>(document.body, 'ragbloom-yardage');
  await settle(element);
  return element;
}

function inside(element: YardageElement): ShadowRoot {
  if (element.shadowRoot === null) throw new Error('The element has no root.');
  return element.shadowRoot;
}

async function settle(element: YardageElement): Promise<void> {
  await element.updateComplete;
  await expect.poll(() => inside(element).querySelector('.table:not(.busy)')).not.toBeNull();
}

const read = (element: YardageElement, part: string) =>
  readText(inside(element), `[part=${part}]`).replaceAll('\u00a0', ' ');

async function say(element: YardageElement, field: string, text: string): Promise<void> {
  type(inside(element), field, text);
  await settle(element);
}

async function press(element: YardageElement, text: string): Promise<void> {
  const found = [...inside(element).querySelectorAll<HTMLElement>('button, .chip')];
  found.find(({ textContent }) => textContent?.trim() === text)?.click();
  await settle(element);
}

describe('YardageElement', () => {
  beforeEach(() => {
    serve(sound);
    YardageElement.source = {
      api: '',
      patience: 4000,
      loadCore: () => Promise.reject(new Error('none')),
    };
    if (customElements.get('ragbloom-yardage') === undefined) {
      customElements.define('ragbloom-yardage', YardageElement);
    }
  });
  afterEach(() => {
    document.body.replaceChildren();
    vi.unstubAllGlobals();
  });

  test('it shows what to buy, how to cut it and what the bolt gives', async () => {
    const element = await open(`<ragbloom-yardage preset="${CLOTH}"></ragbloom-yardage>`);
    expect(read(element, 'figures')).toContain('2⅝ yd');
    expect(read(element, 'figures')).toContain('you use 94½ in of it');
    expect(read(element, 'enough')).toMatch(/not enough\. It gives: 32 × A\./);
    expect(read(element, 'strips')).toContain('10 × 8½ in tall 4 × A');
    expect(inside(element).querySelectorAll('[part=strips] svg')).toHaveLength(2);
    expect(read(element, 'cautions')).toContain('A rotary cutter is a blade');
    const link = find<HTMLAnchorElement>(inside(element), '[part=link]');
    expect(link.getAttribute('href')).toMatch(/^\/v1\/yardage\.svg\?fabrics\.0\.id=Fog/);
  });

  test('it says that the bolt is enough once it is', async () => {
    const element = await open(`<ragbloom-yardage preset="${CLOTH}"></ragbloom-yardage>`);
    await say(element, '#lengthLeft', '3 yd');
    expect(read(element, 'enough')).toBe('What is left on the bolt is enough.');
    await say(element, '#lengthLeft', '');
    expect(inside(element).querySelector('[part=enough]')).toBeNull();
  });

  test('it takes another size of piece and leaves one out, each with a letter of its own', async () => {
    const element = await open(`<ragbloom-yardage preset="${CLOTH}"></ragbloom-yardage>`);
    await press(element, 'Another size');
    await say(element, '#count-1', '6');
    await say(element, '#length-1', '12');
    expect(element.value).toContain('fabrics.0.pieces.1.id=B');
    expect(read(element, 'strips')).toMatch(/× B/);
    find(inside(element), 'button[aria-label="Leave out A"]').click();
    await settle(element);
    expect(element.value).toContain('fabrics.0.pieces.0.id=B');
    expect(element.value).not.toContain('pieces.1');
    expect(inside(element).querySelector('[aria-label^="Leave out"]')).toBeNull();
  });

  test('it measures in the other unit and back, what is left on the bolt too', async () => {
    const element = await open(
      `<ragbloom-yardage preset="${CLOTH.replace('2 yd', '60')}"></ragbloom-yardage>`,
    );
    await press(element, 'cm');
    const left = find<HTMLInputElement>(inside(element), '#lengthLeft');
    expect(left.value).toBe('152.4');
    expect(read(element, 'figures')).toMatch(/ m /);
    await press(element, 'in');
    expect(left.value).toBe('60');
    expect(find<HTMLInputElement>(inside(element), '#width-0').value).toBe('8 1/2');
  });

  test('in another unit it says the figures that it has in theirs, until there are others', async () => {
    const element = await open(`<ragbloom-yardage preset="${CLOTH}"></ragbloom-yardage>`);
    const silent = serve(() => new Promise<Response>(() => {}));
    const chips = [...inside(element).querySelectorAll<HTMLElement>('.chip')];
    chips.find((chip) => chip.textContent?.trim() === 'cm')?.click();
    await element.updateComplete;
    await expect.poll(() => silent.length).toBe(1);
    expect(read(element, 'figures')).toContain('you use 94½ in of it');
    expect(read(element, 'strips')).toContain('10 × 8½ in tall');
    expect(find<HTMLInputElement>(inside(element), '#width').value).toBe('106.68');
  });

  test('it reads what the page has set and does not ask it', async () => {
    const element = await open(
      `<ragbloom-yardage preset="${CLOTH}" locked="fabrics.0.width fabrics.0.pieces unit"></ragbloom-yardage>`,
    );
    const ids = [...inside(element).querySelectorAll('input')].map(({ id }) => id);
    expect(ids).toEqual(['selvage', 'lengthLeft']);
    expect(read(element, 'cloth')).toContain('Width of the bolt. Set by this page. 42 in');
    expect(read(element, 'pieces')).toContain('A: 42 of 8 1/2 × 8 1/2 in');
  });

  test('it starts in the unit of the page', async () => {
    const element = await open('<ragbloom-yardage unit="cm"></ragbloom-yardage>');
    expect(find<HTMLInputElement>(inside(element), '#width').value).toBe('110');
    expect(element.value).toContain('unit=cm');
  });

  test('it tells its host each answer, and what cloth on offer costs', async () => {
    const priced = `${CLOTH}&amp;fabrics.0.offers.0.kind=roll&amp;fabrics.0.offers.0.id=bolt&amp;fabrics.0.offers.0.price=800`;
    const told: YardageDetail[] = [];
    const listen = (event: Event) => told.push((event as CustomEvent<YardageDetail>).detail);
    document.addEventListener('ragbloom-yardage', listen);
    const element = await open(
      `<ragbloom-yardage preset="${priced}" currency="USD"></ragbloom-yardage>`,
    );
    document.removeEventListener('ragbloom-yardage', listen);
    const total = told[0]?.answer.fabrics[0]?.cost?.total ?? 0;
    expect(total).toBe(2100);
    await expect
      .poll(() => inside(element).querySelector('[part=cost] b')?.textContent)
      .toBe('$21.00');
  });

  test('it says what is wrong in its place, and keeps what was typed', async () => {
    const element = await open();
    await say(element, '#count-0', '2.5');
    await expect
      .poll(() => inside(element).querySelector('#count-0-fault')?.textContent)
      .toBe('Give a whole number.');
    expect(find<HTMLInputElement>(inside(element), '#count-0').value).toBe('2.5');
    await say(element, '#count-0', '25');
    expect(inside(element).querySelector('.fault')).toBeNull();
  });

  test.each([
    ['silent', () => Promise.reject(new TypeError('Failed to fetch')), 'no connection'],
    ['busy', () => new Response('', { status: 429 }), 'too much to do'],
    ['broken', () => new Response('', { status: 500 }), 'broke'],
    ['strange', () => Response.json({ fabrics: [] }), 'does not know'],
  ] as const)('%s: it says so, and asks again', async (_kind, give, words) => {
    const element = await open();
    serve(give);
    await say(element, '#count-0', '25');
    expect(read(element, 'notices')).toContain(words);
    serve(sound);
    await press(element, 'Try again');
    expect(read(element, 'notices')).toBe('');
    expect(element.value).toContain('count=25');
  });

  describe.each(['en', 'es', 'de', 'fr'])('in %s', (lang) => {
    test.each([
      ['at first', CLOTH, ''],
      ['with all that is set', CLOTH, 'locked="fabrics unit"'],
      ['with something wrong', CLOTH.replace('count=42', 'count='), ''],
    ])('it breaks no rule of accessibility %s', async (_state, preset, attributes) => {
      for (const width of [320, 1100]) {
        const root = document.createElement('div');
        root.setAttribute('style', `width:${width}px`);
        const element = await open(
          `<ragbloom-yardage lang="${lang}" preset="${preset}" ${attributes}></ragbloom-yardage>`,
        );
        element.replaceWith(root);
        root.append(element);
        await settle(element);
        expect(await findBrokenRules(element)).toEqual([]);
        expect(root.scrollWidth).toBeLessThanOrEqual(width);
      }
    });
  });

  test('it answers without the service where the device can', async () => {
    serve(() => Promise.reject(new TypeError('Failed to fetch')));
    YardageElement.source = { ...YardageElement.source, loadCore: async () => onDevice };
    const element = await open(`<ragbloom-yardage preset="${CLOTH}"></ragbloom-yardage>`);
    expect(read(element, 'figures')).toContain('2⅝ yd');
    expect(read(element, 'notices')).toContain('your device worked this out');
  });
});
