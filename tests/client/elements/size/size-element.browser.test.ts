import { afterEach, beforeEach, describe, expect, test, vi } from 'vitest';
import * as onDevice from '../../../../client/data/on-device.ts';
import { type SizeDetail, SizeElement } from '../../../../client/elements/size/size-element.ts';
import { type Language, loadText } from '../../../../client/text/languages.ts';
import { lightSource } from '../../../../client/text/light/source.ts';
import { sizeSource } from '../../../../client/text/size/source.ts';
import { answerAs, serve } from '../../../support/answering.ts';
import { findBrokenRules } from '../../../support/find-broken-rules.ts';
import { planThrow } from '../../../support/plan-throw.ts';
import { find, readText, type } from '../../../support/render.ts';

const none = () => Promise.reject(new Error('none'));
const sound = answerAs(onDevice.computePlan);

async function open(markup = '<ragbloom-size></ragbloom-size>'): Promise<SizeElement> {
  document.body.innerHTML = markup;
  const element = find<SizeElement>(document.body, 'ragbloom-size');
  await settle(element);
  return element;
}

function inside(element: SizeElement): ShadowRoot {
  if (element.shadowRoot === null) throw new Error('The element has no root.');
  return element.shadowRoot;
}

async function settle(element: SizeElement): Promise<void> {
  await element.updateComplete;
  await expect.poll(() => inside(element).querySelector('.table:not(.busy)')).not.toBeNull();
}

const read = (element: SizeElement, part: string) =>
  readText(inside(element), `[part=${part}]`).replaceAll('\u00a0', ' ');

async function say(element: SizeElement, field: string, text: string): Promise<void> {
  type(inside(element), field, text);
  await settle(element);
}

async function choose(element: SizeElement, label: string): Promise<void> {
  const list = find<HTMLSelectElement>(inside(element), 'select');
  list.selectedIndex = [...list.options].findIndex(({ text }) => text === label);
  list.dispatchEvent(new Event('change'));
  await settle(element);
}

describe('SizeElement', () => {
  beforeEach(() => {
    serve(sound);
    SizeElement.source = { api: '', patience: 4000, loadCore: none };
    if (customElements.get('ragbloom-size') === undefined) {
      customElements.define('ragbloom-size', SizeElement);
    }
  });
  afterEach(() => {
    document.body.replaceChildren();
    vi.unstubAllGlobals();
  });

  test('it shows the figures of the plan that the service gives', async () => {
    const element = await open();
    const { grid, fabrics } = planThrow();
    expect(read(element, 'figures')).toContain(`${grid.columns} × ${grid.rows}`);
    expect(read(element, 'figures')).toContain('50⅛ × 59¾ in');
    expect(read(element, 'result')).toContain('⅛ in wider, ¼ in shorter');
    expect(inside(element).querySelectorAll('li.line')).toHaveLength(fabrics.length);
    expect(read(element, 'cloth')).toContain('3¾ yd');
    const drawing = find(inside(element), 'svg');
    expect(drawing.getAttribute('viewBox')).toBe('0 0 5 6');
    expect(drawing.getAttribute('aria-label')).toContain('5 across, 6 down');
  });

  test('it asks for the size that the reader types or chooses, and tells its host each answer', async () => {
    const element = await open('<ragbloom-size preset="block.cut=8"></ragbloom-size>');
    const told: SizeDetail[] = [];
    element.addEventListener('ragbloom-size', (event) =>
      told.push((event as CustomEvent<SizeDetail>).detail),
    );
    await say(element, '#width', '40');
    expect(element.value).toBe('target.width=40&target.height=60&block.cut=8');
    await choose(element, 'Queen');
    expect(element.value).toContain('target.size=queen');
    await choose(element, 'My own mattress');
    await say(element, '#bed-width', '70');
    expect(element.value).toContain('target.bed.width=70');
    expect(told.map(({ answer }) => answer.block.cut)).toEqual([8, 8, 8, 8]);
    expect(told.every(({ from }) => from === 'service')).toBe(true);
  });

  test('it measures in the other unit and back, and loses nothing', async () => {
    const element = await open(
      '<ragbloom-size preset="target.width=40 1/2&amp;target.height=50"></ragbloom-size>',
    );
    const press = async (unit: string) => {
      const chips = [...inside(element).querySelectorAll<HTMLElement>('.chip')];
      chips.find((chip) => chip.textContent?.trim() === unit)?.click();
      await settle(element);
    };
    await press('cm');
    expect(element.value).toContain('unit=cm');
    expect(find<HTMLInputElement>(inside(element), '#width').value).toBe('102.87');
    expect(read(element, 'figures')).toMatch(/ cm/);
    await press('in');
    expect(find<HTMLInputElement>(inside(element), '#width').value).toBe('40 1/2');
  });

  test('in another unit it says the figures that it has in theirs, until there are others', async () => {
    const element = await open();
    const silent = serve(() => new Promise<Response>(() => {}));
    const chips = [...inside(element).querySelectorAll<HTMLElement>('.chip')];
    chips.find((chip) => chip.textContent?.trim() === 'cm')?.click();
    await element.updateComplete;
    await expect.poll(() => silent.length).toBe(1);
    expect(read(element, 'figures')).toContain('50⅛ × 59¾ in');
    expect(read(element, 'result')).toContain('⅛ in wider, ¼ in shorter');
    const side = (id: string) => find<HTMLInputElement>(inside(element), id).value;
    // 50 × 60 in, an inch being 2.54 cm by the international yard of 1959.
    expect([side('#width'), side('#height')]).toEqual(['127', '152.4']);
    const asked = serve(sound);
    await say(element, '#width', '130');
    expect(decodeURIComponent(asked.at(-1) ?? '')).toContain('target.height=152.4');
    expect(read(element, 'figures')).toMatch(/ cm/);
  });

  test('it reads what the page has set and does not ask it', async () => {
    const element = await open(
      '<ragbloom-size preset="target.size=lap&amp;unit=cm" locked="target unit"></ragbloom-size>',
    );
    expect(inside(element).querySelector('input, select')).toBeNull();
    expect(read(element, 'size')).toMatch(/Set by this page\. Lap, [\d.]+ × [\d.]+ cm/);
    element.value = 'target.size=queen';
    await settle(element);
    expect(read(element, 'size')).toContain('Lap');
  });

  test('a size of which one figure is set cannot be given in another way', async () => {
    const element = await open(
      '<ragbloom-size preset="target.width=40&amp;target.height=50" locked="target.width"></ragbloom-size>',
    );
    expect(inside(element).querySelector('select, #width')).toBeNull();
  });

  test('it always shows what is dangerous', async () => {
    const cot = await open('<ragbloom-size preset="target.size=cot"></ragbloom-size>');
    expect(read(cot, 'cautions')).toMatch(/Danger\. Not for a sleeping baby\./);
    const infant = await open('<ragbloom-size preset="infant=true"></ragbloom-size>');
    expect(read(infant, 'cautions')).toContain('sleeping baby');
    const none = await open();
    expect(inside(none).querySelectorAll('[part=cautions] li')).toHaveLength(0);
  });

  describe('what the cloth costs', () => {
    const offer = (layer: number, role: string, price: number) =>
      `layers.${layer}.role=${role}&amp;layers.${layer}.offers.0.kind=roll&amp;layers.${layer}.offers.0.id=bolt&amp;layers.${layer}.offers.0.price=${price}`;
    const preset = `${offer(0, 'top', 1000)}&amp;${offer(1, 'backing', 900)}`;

    test('is told in the currency of the page', async () => {
      const element = await open(
        `<ragbloom-size preset="${preset}" currency="usd"></ragbloom-size>`,
      );
      const { fabrics } = await detailOf(element);
      const total = fabrics.reduce((sum, { cost }) => sum + (cost?.total ?? 0), 0);
      await expect
        .poll(() => inside(element).querySelector('.cost b')?.textContent)
        .toBe(`$${(total / 100).toFixed(2)}`);
      expect(total).toBeGreaterThan(0);
    });

    test('is not told without a currency, nor where a cloth has no price', async () => {
      const bare = await open(`<ragbloom-size preset="${preset}"></ragbloom-size>`);
      expect(inside(bare).querySelector('.cost')).toBeNull();
      const half = `${offer(0, 'top', 1000)}&amp;layers.1.role=backing`;
      const part = await open(`<ragbloom-size preset="${half}" currency="EUR"></ragbloom-size>`);
      await new Promise((done) => setTimeout(done, 100));
      expect(inside(part).querySelector('.cost')).toBeNull();
    });

    test('a currency that is none is told, and breaks nothing', async () => {
      const element = await open(
        `<ragbloom-size preset="${preset}" currency="dollars"></ragbloom-size>`,
      );
      expect(read(element, 'notices')).toContain('could not be used: currency');
      expect(read(element, 'figures')).toContain('5 × 6');
    });

    test('cloth that is not on offer in full is told of', async () => {
      const pack =
        'layers.0.role=top&amp;layers.0.prints=1&amp;layers.0.offers.0.kind=pieces&amp;layers.0.offers.0.id=Remnant&amp;layers.0.offers.0.width=42&amp;layers.0.offers.0.length=30&amp;layers.0.offers.0.count=1&amp;layers.0.offers.0.most=1&amp;layers.1.role=backing';
      const element = await open(`<ragbloom-size preset="${pack}"></ragbloom-size>`);
      expect(read(element, 'cloth')).toContain('1 × Remnant');
      expect(read(element, 'cloth')).toMatch(/Squares short: \d+/);
    });
  });

  test('it says what is wrong with what was typed, keeps it, and says that the figures are of before', async () => {
    const element = await open('<form><ragbloom-size name="size"></ragbloom-size></form>');
    await say(element, '#width', '21x');
    await expect
      .poll(() => inside(element).querySelector('.fault')?.textContent)
      .toContain('The unit in “21x” is not known.');
    expect(find<HTMLInputElement>(inside(element), '#width').value).toBe('21x');
    expect(read(element, 'notices')).toContain('The figures are the ones from before.');
    await expect.poll(() => element.validationMessage).toContain('21x');
    expect([...new FormData(find<HTMLFormElement>(document.body, 'form'))]).toEqual([]);
    await say(element, '#width', '');
    await expect
      .poll(() => inside(element).querySelector('.fault')?.textContent)
      .toContain('Type a number');
  });

  test.each([
    ['silent', () => Promise.reject(new TypeError('Failed to fetch')), 'no connection'],
    ['busy', () => new Response('', { status: 429 }), 'too much to do'],
    ['broken', () => new Response('', { status: 500 }), 'broke'],
    ['strange', () => Response.json({ ...planThrow(), grid: {} }), 'does not know'],
  ] as const)(
    '%s: it says so, keeps what was typed, and asks again',
    async (_kind, give, words) => {
      const element = await open();
      serve(give);
      await say(element, '#width', '33');
      expect(read(element, 'notices')).toContain(words);
      expect(read(element, 'notices')).toContain('from before');
      expect(find<HTMLInputElement>(inside(element), '#width').value).toBe('33');
      serve(sound);
      find(inside(element), '[part=notices] button').click();
      await settle(element);
      expect(read(element, 'notices')).toBe('');
      expect(element.value).toContain('target.width=33');
    },
  );

  test('it answers without the service where the device can', async () => {
    serve(() => Promise.reject(new TypeError('Failed to fetch')));
    SizeElement.source = { ...SizeElement.source, loadCore: async () => onDevice };
    const element = await open();
    expect(read(element, 'figures')).toContain('5 × 6');
    expect(read(element, 'notices')).toContain('your device worked this out');
  });

  test('what a later engine adds passes, in the answer and in the event', async () => {
    serve(() => Response.json({ ...JSON.parse(JSON.stringify(planThrow())), later: [1] }));
    let detail: unknown;
    document.addEventListener(
      'ragbloom-size',
      (event) => {
        detail = (event as CustomEvent).detail.answer;
      },
      { once: true },
    );
    const element = await open();
    expect(read(element, 'figures')).toContain('5 × 6');
    expect(detail).toHaveProperty('later');
  });

  test('the host has its own heading, button and note, and what stands inside shows until then', async () => {
    const element = await open(
      '<ragbloom-size><p>Sizes</p><h3 slot="title">How big?</h3><button slot="action">Buy</button><p slot="note">Ours</p></ragbloom-size>',
    );
    const shown = (selector: string) => find(element, selector).assignedSlot?.name ?? 'nowhere';
    expect([shown('h3'), shown('button'), shown('[slot=note]')]).toEqual([
      'title',
      'action',
      'note',
    ]);
    expect(find(element, 'p:not([slot])').assignedSlot).toBeNull();
  });

  describe.each(['en', 'es', 'de', 'fr'])('in %s', (lang) => {
    const states: readonly (readonly [string, string])[] = [
      ['at first', ''],
      ['with a danger, and with what could not be used', 'preset="target.size=cot&amp;colour=red"'],
      ['with all that is set', 'preset="target.size=lap" locked="target unit"'],
      ['with something wrong', 'preset="target.width=40&amp;target.height="'],
      ['switched off', 'disabled'],
    ];

    test.each(states)('it breaks no rule of accessibility %s', async (_state, attributes) => {
      for (const width of [320, 1100]) {
        const root = document.createElement('div');
        root.setAttribute('style', `width:${width}px`);
        const element = await open(`<ragbloom-size lang="${lang}" ${attributes}></ragbloom-size>`);
        element.replaceWith(root);
        root.append(element);
        await settle(element);
        expect(await findBrokenRules(element)).toEqual([]);
        expect(root.scrollWidth).toBeLessThanOrEqual(width);
      }
    });

    test('it says all it says in that language', async () => {
      const element = await open(`<ragbloom-size lang="${lang}"></ragbloom-size>`);
      const words = await loadText(sizeSource, lang as Language);
      expect(readText(inside(element), 'h2')).toBe(words.title.replace(/\s+/g, ' '));
      expect(read(element, 'link')).toBe(words.whole.replace(/\s+/g, ' '));
      serve(() => new Response('', { status: 429 }));
      await say(element, '#width', '33');
      const { trouble } = await loadText(lightSource, lang as Language);
      expect(read(element, 'notices')).toContain(trouble.busy.replace(/\s+/g, ' '));
    });
  });

  test('all that is pressed or typed into is 44 px tall', async () => {
    const element = await open();
    for (const target of inside(element).querySelectorAll(
      ':is(input, select, button, a):not(.fractions *)',
    )) {
      const shown = target.closest('.chip') ?? target;
      expect(shown.getBoundingClientRect().height).toBeGreaterThanOrEqual(44);
    }
  });

  test('it is hidden where its host hides it', async () => {
    const element = await open('<ragbloom-size hidden></ragbloom-size>');
    expect(getComputedStyle(element).display).toBe('none');
    element.hidden = false;
    expect(getComputedStyle(element).display).toBe('block');
  });
});

/** The answer that an element tells next, asked for again. */
async function detailOf(element: SizeElement): Promise<SizeDetail['answer']> {
  const told = new Promise<SizeDetail>((done) => {
    element.addEventListener(
      'ragbloom-size',
      (event) => done((event as CustomEvent<SizeDetail>).detail),
      { once: true },
    );
  });
  const { value } = element;
  element.value = value;
  return (await told).answer;
}
