import { afterEach, beforeEach, describe, expect, test, vi } from 'vitest';
import { find, type } from '../../support/render.ts';
import { ToyElement } from '../../support/toy-element.ts';
import { inside, openToy, readToy, serveToys, settleToy, soundly } from '../../support/toys.ts';

const home = location.href;
const pause = (time: number) => new Promise((done) => setTimeout(done, time));

async function press(toy: ToyElement, button: string): Promise<void> {
  find(inside(toy), button).click();
  await settleToy(toy);
}

async function say(toy: ToyElement, length: string): Promise<void> {
  type(inside(toy), '#length', length);
  await toy.updateComplete;
  await settleToy(toy);
}

describe('AskingElement', () => {
  beforeEach(() => {
    ToyElement.from = {
      api: '',
      patience: 4000,
      loadCore: () => Promise.reject(new Error('none')),
    };
  });
  afterEach(() => {
    document.body.replaceChildren();
    vi.unstubAllGlobals();
    localStorage.clear();
    history.replaceState(null, '', home);
  });

  test('it asks what its preset asks, of the service that its host names', async () => {
    const asked = serveToys();
    await openToy(
      '<ragbloom-toy preset="rope.length=4" api="https://toys.example"></ragbloom-toy>',
    );
    expect(asked).toEqual(['https://toys.example/v1/toy?rope.length=4']);
  });

  test('an object as request wins over a preset, and both may be changed', async () => {
    serveToys();
    const toy = await openToy('<ragbloom-toy preset="rope.length=4"></ragbloom-toy>');
    toy.request = { rope: { length: '8 1/2' } };
    await toy.updateComplete;
    await settleToy(toy);
    expect(readToy(toy).draft['rope.length']).toBe('8 1/2');
    toy.request = undefined;
    toy.setAttribute('preset', 'rope.length=6');
    await toy.updateComplete;
    await settleToy(toy);
    expect(readToy(toy).draft['rope.length']).toBe('6');
  });

  test('properties and the value that a page set before the element was defined are kept', async () => {
    serveToys();
    document.body.innerHTML = '<ragbloom-early></ragbloom-early><ragbloom-early></ragbloom-early>';
    const [one, other] = [...document.body.children] as ToyElement[];
    Object.assign(one ?? {}, { preset: 'rope.length=3', locked: 'rope' });
    Object.assign(other ?? {}, { value: 'rope.length=5' });
    customElements.define('ragbloom-early', class extends ToyElement {});
    if (one === undefined || other === undefined) throw new Error('Two were put there.');
    await settleToy(one);
    await settleToy(other);
    expect(readToy(one).draft['rope.length']).toBe('3');
    expect(one.hasAttribute('value') || Object.hasOwn(one, 'preset')).toBe(false);
    expect(other.value).toBe('rope.length=5');
  });

  test('setting the value asks that, and setting nothing begins again', async () => {
    serveToys();
    const toy = await openToy('<ragbloom-toy preset="rope.length=4"></ragbloom-toy>');
    toy.value = 'rope.length=9&rope.width=2';
    await settleToy(toy);
    expect(toy.value).toBe('rope.length=9&rope.width=2');
    toy.value = '';
    await settleToy(toy);
    expect(toy.value).toBe('rope.length=4');
  });

  test('it tells each answer in an event that crosses the shadow', async () => {
    serveToys();
    const told: CustomEvent[] = [];
    const listen = (event: Event) => told.push(event as CustomEvent);
    document.addEventListener('ragbloom-toy', listen);
    const toy = await openToy();
    await say(toy, '5');
    document.removeEventListener('ragbloom-toy', listen);
    expect(told.map(({ detail }) => detail)).toMatchObject([
      { from: 'service', answer: { links: { self: '/v1/toy?rope.length=10' } } },
      { from: 'service', answer: { links: { self: '/v1/toy?rope.length=5' } } },
    ]);
    expect(told.every(({ bubbles, composed }) => bubbles && composed)).toBe(true);
  });

  test('it asks once when typing rests', async () => {
    const asked = serveToys();
    const toy = await openToy();
    for (const length of ['1', '12', '125']) type(inside(toy), '#length', length);
    await toy.updateComplete;
    await settleToy(toy);
    expect(asked.slice(1)).toEqual(['/v1/toy?rope.length=125']);
  });

  describe('what only the host may set', () => {
    const LOCKED =
      'preset="unit=in&rope.length=4" locked="rope.length" address remember name="rope"';
    const open = () => openToy(`<form><ragbloom-toy ${LOCKED}></ragbloom-toy></form>`);

    test('stays where an address, the device, a value or a form says other', async () => {
      serveToys();
      history.replaceState(null, '', '?rope.length=99&rope.width=1');
      localStorage.setItem('ragbloom-draft ragbloom-toy', 'rope.length=98');
      const toy = await open();
      expect(readToy(toy).draft).toMatchObject({ 'rope.length': '4', 'rope.width': '1' });
      toy.value = 'rope.length=97';
      await settleToy(toy);
      expect(readToy(toy).draft['rope.length']).toBe('4');
      toy.formStateRestoreCallback('rope.length=96');
      await settleToy(toy);
      expect(readToy(toy).draft['rope.length']).toBe('4');
    });

    test('stays when it is typed over or something else is chosen', async () => {
      serveToys();
      const toy = await open();
      await say(toy, '5');
      expect(readToy(toy).draft['rope.length']).toBe('4');
      await press(toy, '#wider');
      expect(readToy(toy).draft).toMatchObject({ 'rope.length': '4', 'rope.width': '2' });
    });

    test('is as long in another unit, and again in the first', async () => {
      serveToys();
      const toy = await open();
      await press(toy, '#cm');
      expect(readToy(toy).draft).toMatchObject({ 'rope.length': '10.16', unit: 'cm' });
      await press(toy, '#wider');
      expect(readToy(toy).draft['rope.length']).toBe('10.16');
      await press(toy, '#in');
      await press(toy, '#wider');
      expect(readToy(toy).draft['rope.length']).toBe('4');
    });

    test('is what there is to begin with where the host says nothing of it', async () => {
      serveToys();
      const toy = await openToy('<ragbloom-toy locked="rope"></ragbloom-toy>');
      await say(toy, '5');
      expect(readToy(toy).draft['rope.length']).toBe('10');
    });

    test('may be the unit itself', async () => {
      const asked = serveToys();
      const toy = await openToy('<ragbloom-toy unit="cm" locked="unit"></ragbloom-toy>');
      await press(toy, '#in');
      expect(readToy(toy).draft['unit']).toBe('cm');
      expect(asked.every((url) => url.includes('unit=cm'))).toBe(true);
    });
  });

  describe('what a host got wrong', () => {
    test('is told, and the rest is asked for', async () => {
      serveToys();
      const toy = await openToy(
        '<ragbloom-toy preset="rope.length=4&rope.width=wide&colour=red" unit="furlong"></ragbloom-toy>',
      );
      const { draft, hostFaults, faults } = readToy(toy);
      expect(draft).toEqual({ 'rope.length': '4' });
      expect(hostFaults.map(({ path }) => path.join('.'))).toEqual([
        'colour',
        'rope.width',
        'unit',
      ]);
      expect(faults).toEqual([]);
      expect(toy.value).toBe('rope.length=4');
    });

    test('is not looked for in what was typed since', async () => {
      serveToys();
      const toy = await openToy('<ragbloom-toy preset="rope.width=wide"></ragbloom-toy>');
      await say(toy, 'wide');
      const { draft, faults } = readToy(toy);
      expect(draft['rope.length']).toBe('wide');
      expect(faults.map(({ path }) => path.join('.'))).toEqual(['rope.length']);
    });
  });

  describe('trouble', () => {
    const CASES: readonly (readonly [string, () => Response])[] = [
      ['busy', () => new Response('', { status: 429 })],
      ['broken', () => new Response('', { status: 500 })],
      ['broken', () => new Response('', { status: 503 })],
      ['strange', () => Response.json({ other: 1 })],
      ['strange', () => new Response('<p>no JSON')],
      [
        'silent',
        () => {
          throw new TypeError('Failed to fetch');
        },
      ],
    ];

    test.each(CASES)(
      '%s is told, what was typed kept, and asking again helps',
      async (kind, give) => {
        let isDown = false;
        serveToys((query, url) => (isDown ? give() : soundly(query, url)));
        const toy = await openToy('<form><ragbloom-toy name="rope"></ragbloom-toy></form>');
        isDown = true;
        await say(toy, '7');
        expect(readToy(toy)).toMatchObject({ trouble: kind, draft: { 'rope.length': '7' } });
        expect(toy.value).toBe('');
        isDown = false;
        await press(toy, '#retry');
        expect(readToy(toy).trouble).toBeUndefined();
        expect(toy.value).toBe('rope.length=7');
      },
    );

    test('is none where the device can work it out', async () => {
      serveToys(() => new Response('', { status: 500 }));
      const self = '/v1/toy?rope.length=10';
      const loadCore = vi.fn(async () => () => ({ input: {}, links: { self } }));
      ToyElement.from = { ...ToyElement.from, loadCore };
      const toy = await openToy();
      expect(readToy(toy)).toMatchObject({ from: 'device' });
      expect(readToy(toy).trouble).toBeUndefined();
      expect(toy.value).toBe('rope.length=10');
    });
  });

  test('what the device needs is fetched ahead only where that was asked or the page is its own', async () => {
    serveToys();
    const loadCore = vi.fn(() => Promise.reject(new Error('none')));
    ToyElement.from = { ...ToyElement.from, loadCore };
    await openToy();
    await openToy('<ragbloom-toy address embedded></ragbloom-toy>');
    await pause(60);
    expect(loadCore).not.toHaveBeenCalled();
    await openToy('<ragbloom-toy ahead embedded></ragbloom-toy>');
    await expect.poll(() => loadCore.mock.calls.length).toBe(1);
    await openToy('<ragbloom-toy address></ragbloom-toy>');
    await expect.poll(() => loadCore.mock.calls.length).toBe(2);
  });

  test('it keeps its question in the address and follows the back button, where it was asked to', async () => {
    serveToys();
    const toy = await openToy('<ragbloom-toy address></ragbloom-toy>');
    expect(location.search).toBe(new URL(home).search);
    await press(toy, '#wider');
    expect(location.search).toBe('?rope.length=10&rope.width=2');
    await say(toy, '5');
    expect(location.search).toBe('?rope.length=5&rope.width=2');
    history.back();
    await expect.poll(() => location.search).toBe('?rope.length=10&rope.width=2');
    await expect.poll(() => readToy(toy).draft['rope.length']).toBe('10');
    // What was gone back from would else lie before the tests that come.
    history.pushState(null, '', home);
  });

  test('it touches neither address nor storage unless it was asked to, and never when embedded', async () => {
    serveToys();
    for (const flags of ['', 'address remember embedded']) {
      const toy = await openToy(`<ragbloom-toy ${flags}></ragbloom-toy>`);
      await say(toy, '5');
      expect(location.href).toBe(home);
      expect(localStorage.length).toBe(0);
    }
  });

  test('it remembers what was typed on the device', async () => {
    serveToys();
    await say(await openToy('<ragbloom-toy remember></ragbloom-toy>'), '5');
    const again = await openToy('<ragbloom-toy remember preset="rope.length=4"></ragbloom-toy>');
    expect(readToy(again).draft['rope.length']).toBe('5');
  });

  test('what was asked before is answered no more', async () => {
    const held: (() => void)[] = [];
    serveToys(async (query, url) => {
      if (query.get('rope.length') === '1') await new Promise<void>((done) => held.push(done));
      return soundly(query, url);
    });
    const toy = await openToy();
    type(inside(toy), '#length', '1');
    await expect.poll(() => held.length).toBe(1);
    await say(toy, '2');
    held[0]?.();
    await pause(30);
    expect(toy.value).toBe('rope.length=2');
  });

  test('an element that is moved while it waits asks again', async () => {
    const asked = serveToys(async (query, url) => {
      await pause(100);
      return soundly(query, url);
    });
    document.body.innerHTML = '<div></div><ragbloom-toy></ragbloom-toy>';
    const toy = find<ToyElement>(document.body, 'ragbloom-toy');
    await expect.poll(() => asked.length).toBe(1);
    find(document.body, 'div').append(toy);
    await settleToy(toy);
    expect(asked).toHaveLength(2);
    expect(toy.value).toBe('rope.length=10');
  });
});
