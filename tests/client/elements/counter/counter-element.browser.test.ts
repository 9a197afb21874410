import { afterEach, beforeEach, describe, expect, test, vi } from 'vitest';
import type { CounterElement } from '../../../../client/elements/counter/counter-element.ts';
import type { CounterDetail } from '../../../../client/elements/counter/counter-report.ts';
import { drawAddress, learnSentences } from '../../../../client/elements/counter/fetch-lazily.ts';
import { insideCounter, openCounter, settleCounter } from '../../../support/open-counter.ts';
import { find, readText, type } from '../../../support/render.ts';

vi.mock('../../../../client/elements/counter/fetch-lazily.ts', { spy: true });

const PLAN = 'target.width=40&amp;target.height=50';
const home = location.href;

async function press(counter: CounterElement, selector: string): Promise<void> {
  find(insideCounter(counter), selector).click();
  await settleCounter(counter);
}

async function say(counter: CounterElement, selector: string, text: string): Promise<void> {
  type(insideCounter(counter), selector, text);
  await settleCounter(counter);
}

const turnTo = (counter: CounterElement, mode: number) =>
  press(counter, `.modes label:nth-child(${mode}) input`);
const read = (counter: CounterElement, selector: string) =>
  readText(insideCounter(counter), selector);

describe('CounterElement', () => {
  beforeEach(() => localStorage.clear());
  afterEach(() => {
    document.body.replaceChildren();
    vi.useRealTimers();
    vi.unstubAllGlobals();
    vi.restoreAllMocks();
    for (const spy of [learnSentences, drawAddress]) vi.mocked(spy).mockReset();
    history.replaceState(null, '', home);
  });

  test('it asks for the cloth of its preset, without a network', async () => {
    const fetched = vi.fn(async () => Promise.reject(new TypeError('No network')));
    vi.stubGlobal('fetch', fetched);
    const counter = await openCounter(`preset="${PLAN}"`);
    expect(read(counter, 'h2')).toBe('Print A');
    expect(read(counter, '.amount')).toBe('¾ yd');
    await press(counter, '.bar button:last-child');
    await press(counter, '.bar button:last-child');
    await press(counter, '.bar button:last-child');
    await press(counter, '.bar button:last-child');
    expect(read(counter, 'h2')).toBe('Flannel');
    expect(read(counter, '.amount')).toBe('2⅜ yd');
    expect(fetched).not.toHaveBeenCalled();
  });

  test('a chip for each usual width says what it would take, and choosing one asks for that', async () => {
    const counter = await openCounter(`preset="${PLAN}"`);
    const chips = [...insideCounter(counter).querySelectorAll('.widths .chip')];
    expect(chips.map((chip) => chip.textContent?.replace(/\s+/g, ' ').trim())).toEqual([
      '42 in ¾ yd',
      '44 in ¾ yd',
      '54 in ¾ yd',
      '58 in ¾ yd',
      '60 in ¾ yd',
      '108 in ⅜ yd',
    ]);
    await press(counter, '.widths label:last-child input');
    expect(read(counter, '.amount')).toBe('⅜ yd');
    expect(find<HTMLInputElement>(insideCounter(counter), '#width').value).toBe('108');
  });

  test('a width that cannot be read is told at its field and stays as it was typed', async () => {
    const counter = await openCounter(`preset="${PLAN}"`);
    await say(counter, '#width', 'wide');
    await expect
      .poll(() => read(counter, '#width-fault'))
      .toBe('“wide” is not a length. Write 8½, 8.5 or 21,5 cm.');
    expect(find<HTMLInputElement>(insideCounter(counter), '#width').value).toBe('wide');
    expect(read(counter, '.amount')).toBe('¾ yd');
    await say(counter, '#price', '1,250');
    expect(read(counter, '#price-fault')).toBe('That is no price. Write 12.99 or 12,99.');
  });

  test('what is left is enough, or makes the nearest quilt, which can be taken', async () => {
    const counter = await openCounter(`preset="${PLAN}" `);
    for (let step = 0; step < 4; step += 1) await press(counter, '.bar button:last-child');
    await turnTo(counter, 2);
    await say(counter, '#left', '2 1/2');
    expect(read(counter, '.verdict')).toBe('Exactly enough');
    await say(counter, '#left', '2');
    expect(read(counter, '.verdict')).toBe(
      'Not enough It gives 15 of the 21 squares that you need.',
    );
    await vi.waitFor(() => expect(read(counter, '.nearest b')).toBe('4 by 6 blocks, cut 10 in'));
    await press(counter, '.nearest button');
    expect(counter.value).toBe('target.columns=4&target.rows=6&block.cut=10');
  });

  test('the nearest quilt is taken with the bolt, the prices and the ticks that it was found for', async () => {
    const counter = await openCounter(`preset="${PLAN}#at=4&4.width=44&4.price=9&1.got=1"`);
    await turnTo(counter, 2);
    await say(counter, '#left', '2');
    await vi.waitFor(() => expect(read(counter, '.nearest b')).not.toBe(''));
    await press(counter, '.nearest button');
    expect(read(counter, 'h2')).toBe('Flannel');
    expect(find<HTMLInputElement>(insideCounter(counter), '#width').value).toBe('44');
    expect(find<HTMLInputElement>(insideCounter(counter), '#price').value).toBe('9');
    expect(read(counter, '.sum')).toMatch(/^1 of 5 bought/);
    await turnTo(counter, 2);
    expect(find<HTMLInputElement>(insideCounter(counter), '#left').value).toBe('');
  });

  test('where the sentences cannot be had, one stands for all and the next change asks again', async () => {
    vi.mocked(learnSentences).mockReset().mockResolvedValue(undefined);
    const counter = await openCounter(`preset="${PLAN}"`);
    await say(counter, '#width', 'wide');
    expect(read(counter, '#width-fault')).toMatch(/^That cannot be used\./);
    await new Promise((done) => setTimeout(done, 800));
    expect(vi.mocked(learnSentences).mock.calls.length).toBeLessThan(4);
    vi.mocked(learnSentences).mockReset();
    await say(counter, '#width', 'wider');
    await vi.waitFor(() => expect(read(counter, '#width-fault')).toMatch(/is not a length/));
  });

  test('sentences of a language that was left do not come late', async () => {
    const { promise, resolve } = Promise.withResolvers<undefined>();
    vi.mocked(learnSentences).mockReset().mockReturnValueOnce(promise);
    const counter = await openCounter(`preset="${PLAN}"`);
    await say(counter, '#width', 'wide');
    counter.lang = 'de';
    await expect.poll(() => read(counter, '#width-fault')).toMatch(/keine Länge/);
    resolve(undefined);
    await settleCounter(counter);
    expect(read(counter, '#width-fault')).toMatch(/keine Länge/);
  });

  test('the code of an address that has changed meanwhile is not shown', async () => {
    const { promise, resolve } = Promise.withResolvers<'long'>();
    vi.mocked(drawAddress).mockReset().mockReturnValueOnce(promise);
    const counter = await openCounter(`preset="${PLAN}"`);
    await turnTo(counter, 4);
    await press(counter, '.panel .chips button:nth-last-child(2)');
    await press(counter, '.list li:nth-child(2) input');
    resolve('long');
    await settleCounter(counter);
    expect(insideCounter(counter).querySelector('.chips + p')).toBeNull();
    vi.mocked(drawAddress).mockReturnValueOnce(Promise.resolve('unfetched'));
    await press(counter, '.panel .chips button:nth-last-child(2)');
    expect(read(counter, '.chips + p')).toMatch(/could not be fetched/);
  });

  test('what is typed before anything is asked leaves the list of the device', async () => {
    localStorage.setItem('ragbloom-draft ragbloom-counter', '?target.size=lap#0.got=1');
    const counter = await openCounter('remember');
    await turnTo(counter, 4);
    await press(counter, '.panel .chips button:last-child');
    await say(counter, '#cut', '8');
    expect(localStorage.getItem('ragbloom-draft ragbloom-counter')).toContain('target.size=lap');
  });

  test('an element that is taken away leaves the address to the page', async () => {
    const counter = await openCounter(`preset="${PLAN}" address`);
    await press(counter, '.tick input');
    history.pushState(null, '', '?elsewhere');
    counter.remove();
    await new Promise((done) => setTimeout(done, 700));
    expect(location.search + location.hash).toBe('?elsewhere');
  });

  test('a value that is set, or restored, before the element was drawn is asked for', async () => {
    await openCounter('');
    const counter = document.createElement('ragbloom-counter') as CounterElement;
    counter.preset = 'target.size=lap';
    counter.value = 'cut=8.5&count=40';
    document.body.replaceChildren(counter);
    await settleCounter(counter);
    expect(counter.value).toBe('cut=8.5&count=40');
    const restored = document.createElement('ragbloom-counter') as CounterElement;
    restored.formStateRestoreCallback('?target.size=throw#0.got=1');
    document.body.replaceChildren(restored);
    await settleCounter(restored);
    expect(read(restored, '.sum')).toMatch(/^1 of /);
  });

  test('two bolts are compared by what the whole quilt costs', async () => {
    const counter = await openCounter(`preset="${PLAN}#at=4&4.price=12.99" currency="USD"`);
    await turnTo(counter, 3);
    expect(read(counter, '.panel > p')).toBe('Type both prices to compare.');
    await say(counter, '#otherWidth', '108');
    await say(counter, '#otherPrice', '25');
    expect(read(counter, '.panel > p')).toBe(
      'The other bolt is cheaper by $2.72. 4 cloths have no price yet.',
    );
  });

  test('what is bought is ticked in the bar and in the list, and summed', async () => {
    const counter = await openCounter(`preset="${PLAN}#0.price=10&1.price=8" currency="USD"`);
    await press(counter, '.tick input');
    expect(read(counter, '.sum')).toBe(
      '1 of 5 bought So far $7.50 In all $13.50 3 cloths have no price yet.',
    );
    await turnTo(counter, 4);
    await press(counter, '.list li:nth-child(2) input');
    expect(read(counter, '.sum')).toBe(
      '2 of 5 bought So far $13.50 In all $13.50 3 cloths have no price yet.',
    );
    await press(counter, '.list li:nth-child(5) .cloth');
    expect(read(counter, 'h2')).toBe('Flannel');
  });

  test('its event tells what to ask for and what is bought', async () => {
    const told: CounterDetail[] = [];
    const counter = await openCounter(`preset="${PLAN}"`);
    counter.addEventListener('ragbloom-counter', (event) =>
      told.push((event as CustomEvent<CounterDetail>).detail),
    );
    await press(counter, '.tick input');
    expect(told.at(-1)?.question).toBe('target.width=40&target.height=50');
    expect(told.at(-1)?.cloths[0]).toEqual({ amount: 0.75, unit: 'yd', isGot: true });
    expect(told.at(-1)?.cloths[4]).toEqual({ amount: 2.375, unit: 'yd', isGot: false });
  });

  test('the answer is announced once, when typing rests', async () => {
    const counter = await openCounter(`preset="${PLAN}"`);
    const status = find(insideCounter(counter), '[role=status]');
    const said: string[] = [];
    new MutationObserver(() => said.push(status.textContent ?? '')).observe(status, {
      childList: true,
      characterData: true,
      subtree: true,
    });
    for (const typed of ['1', '10', '108']) type(insideCounter(counter), '#width', typed);
    await expect.poll(() => said.length).toBeGreaterThan(0);
    await new Promise((done) => setTimeout(done, 700));
    expect(said).toHaveLength(1);
    expect(said[0]).toMatch(/^Print A: ask for .+\.$/);
  });

  test('with nothing asked for it takes squares of one size, or the address of a plan', async () => {
    const counter = await openCounter('');
    expect(read(counter, 'h2')).toBe('What do you need?');
    await say(counter, '#cut', '8½');
    await press(counter, 'form.stack .go');
    await vi.waitFor(() => expect(read(counter, '#count-fault')).toBe('Type a number, such as 6.'));
    expect(find<HTMLInputElement>(insideCounter(counter), '#cut').value).toBe('8½');
    await say(counter, '#count', '40');
    await press(counter, 'form.stack .go');
    expect(read(counter, '.amount')).toBe('2½ yd');
    expect(counter.value).toBe('cut=8.5&count=40');
  });

  test('an address without a plan, or with a wrong one, is told; what was pasted stays', async () => {
    const counter = await openCounter('');
    await say(counter, '#address', 'hello');
    await press(counter, 'form.field button');
    expect(read(counter, '[role=alert]')).toMatch(/There is no plan in that/);
    await say(counter, '#address', 'https://quilts.example/?target.size=lap&block.seam=9');
    await press(counter, 'form.field button');
    expect(read(counter, '[role=alert]')).toMatch(/block\.seam/);
    expect(find<HTMLInputElement>(insideCounter(counter), '#address').value).toContain('lap');
    await say(counter, '#address', 'https://quilts.example/?target.size=lap');
    await press(counter, 'form.field button');
    expect(read(counter, 'h2')).toBe('Print A');
  });

  test('it touches neither address nor storage unless it is asked to', async () => {
    const counter = await openCounter(`preset="${PLAN}"`);
    await press(counter, '.tick input');
    await new Promise((done) => setTimeout(done, 700));
    expect([location.href, localStorage.length]).toEqual([home, 0]);
    const embedded = await openCounter(`preset="${PLAN}" address remember embedded`);
    await press(embedded, '.tick input');
    await new Promise((done) => setTimeout(done, 700));
    expect([location.href, localStorage.length]).toEqual([home, 0]);
  });

  test('with address and remember, what was typed and ticked is there again', async () => {
    const counter = await openCounter(`preset="${PLAN}" address remember`);
    await press(counter, '.tick input');
    await say(counter, '#price', '12.99');
    await vi.waitFor(() => expect(location.hash).toBe('#0.got=1&0.price=12.99'));
    history.replaceState(null, '', location.pathname);
    const again = await openCounter('remember');
    expect(find<HTMLInputElement>(insideCounter(again), '#price').value).toBe('12.99');
    expect(find<HTMLInputElement>(insideCounter(again), '.tick input').checked).toBe(true);
  });

  test('the back button leads back to the list that was left', async () => {
    const counter = await openCounter(`preset="${PLAN}" address`);
    await turnTo(counter, 4);
    await press(counter, '.panel .chips button:last-child');
    expect(read(counter, 'h2')).toBe('What do you need?');
    history.back();
    await vi.waitFor(() => expect(read(counter, 'h2')).toBe('Print A'));
  });

  test('where storage is refused it goes on as long as the page is open', async () => {
    vi.spyOn(Storage.prototype, 'setItem').mockImplementation(() => {
      throw new DOMException('No', 'QuotaExceededError');
    });
    vi.spyOn(Storage.prototype, 'getItem').mockImplementation(() => {
      throw new DOMException('No', 'SecurityError');
    });
    const counter = await openCounter(`preset="${PLAN}" remember`);
    await press(counter, '.tick input');
    expect(read(counter, '.sum')).toBe('1 of 5 bought');
  });

  test('a form sends what is asked for, resets it, and says what is wrong', async () => {
    await openCounter('');
    document.body.innerHTML = `<form><ragbloom-counter name="list" preset="${PLAN}"></ragbloom-counter></form>`;
    const form = find<HTMLFormElement>(document.body, 'form');
    const counter = find<CounterElement>(form, 'ragbloom-counter');
    await settleCounter(counter);
    expect(new FormData(form).get('list')).toBe('target.width=40&target.height=50');
    counter.value = 'target.size=lap';
    await settleCounter(counter);
    expect(new FormData(form).get('list')).toBe('target.size=lap');
    counter.value = 'target.size=palace';
    await settleCounter(counter);
    expect([counter.checkValidity(), new FormData(form).get('list')]).toEqual([false, null]);
    form.reset();
    await settleCounter(counter);
    expect(counter.value).toBe('target.width=40&target.height=50');
  });
});
