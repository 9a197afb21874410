import { afterEach, beforeEach, describe, expect, test, vi } from 'vitest';
import * as washOnDevice from '../../../../client/data/wash-on-device.ts';
import { type WashDetail, WashElement } from '../../../../client/elements/wash/wash-element.ts';
import { find, readText, type } from '../../../support/render.ts';

const home = location.href;
const ONE =
  'swatches.0.fabric=flannel&swatches.0.direction=length&swatches.0.before=10&swatches.0.after=9.5&sewn.width=42&sewn.height=52';
let asked: string[] = [];

/** The service as the core would answer. */
async function answer(url: string): Promise<Response> {
  asked.push(url);
  const outcome = washOnDevice.computeWash(new URL(url, location.href).search);
  if (outcome.ok) return Response.json(outcome.value);
  const errors = outcome.faults.map(({ path, ...fault }) => ({
    ...fault,
    pointer: `/${path.join('/')}`,
  }));
  return Response.json({ errors }, { status: 422 });
}

async function open(change: Partial<WashElement> = {}): Promise<ShadowRoot> {
  const element = Object.assign(new WashElement(), change);
  document.body.replaceChildren(element);
  await expect.poll(() => element.shadowRoot?.querySelector('.busy, .waiting')).toBeNull();
  if (element.shadowRoot === null) throw new Error('The element has no root.');
  return element.shadowRoot;
}

describe('WashElement', () => {
  beforeEach(() => {
    asked = [];
    vi.stubGlobal('fetch', vi.fn(answer));
    WashElement.source = { api: '', patience: 4000, loadCore: async () => washOnDevice };
    if (customElements.get('ragbloom-wash') === undefined)
      customElements.define('ragbloom-wash', WashElement);
  });
  afterEach(() => {
    document.body.replaceChildren();
    vi.unstubAllGlobals();
    vi.restoreAllMocks();
    localStorage.clear();
    history.replaceState(null, '', home);
  });

  test('it takes what its host gives and asks the service that its host names', async () => {
    const root = await open({ preset: ONE, api: 'https://other.example' });
    expect(asked[0]).toMatch(/^https:\/\/other\.example\/v1\/wash-shrinkage\?/);
    expect(readText(root, '.figures')).toContain('Sewn');
    expect(location.href).toBe(home);
    expect(localStorage.length).toBe(0);
  });

  test('it tells its host of every answer', async () => {
    const details: WashDetail[] = [];
    const listen = (event: Event) => details.push((event as CustomEvent<WashDetail>).detail);
    document.addEventListener('ragbloom-wash', listen);
    await open({ preset: ONE });
    document.removeEventListener('ragbloom-wash', listen);
    expect(details.map(({ from, answer: { swatches } }) => [from, swatches.length])).toEqual([
      ['service', 1],
    ]);
  });

  test('it puts what was typed into the address once typing rests, one step for one field', async () => {
    const root = await open({ preset: ONE, address: true });
    const push = vi.spyOn(history, 'pushState');
    type(root, '#sewn-width', '4');
    type(root, '#sewn-width', '44');
    await expect.poll(() => location.search).toContain('sewn.width=44');
    expect(asked.filter((url) => url.includes('sewn.width=4&'))).toEqual([]);
    expect(push).toHaveBeenCalledOnce();
    push.mockRestore();
  });

  test('it keeps half a row on the device, and begins with it', async () => {
    const root = await open({ preset: ONE, remember: true });
    type(root, '#c0-1-width-before', '12 3/8');
    const again = await open({ remember: true });
    expect(find<HTMLInputElement>(again, '#c0-0-width-before').value).toBe('12 3/8');
  });

  test('it leaves out what an address asks for in vain, and says so', async () => {
    const root = await open({ preset: `${ONE}&grain=round` });
    expect(readText(root, '[role=alert]')).toContain(
      'Some of what was asked for could not be read',
    );
    expect(readText(root, '.figures')).toContain('Sewn');
  });

  test('it leaves to the host what the host has set, in another unit too', async () => {
    const root = await open({ preset: ONE, locked: 'sewn layers' });
    await expect.poll(() => root.querySelector('#sewn-width')).not.toBeNull();
    expect(find(root, '#sewn-width').matches(':disabled')).toBe(true);
    expect(find(root, 'select#top').matches(':disabled')).toBe(true);
    expect(find(root, '#c0-0-length-before').matches(':disabled')).toBe(false);
    [...root.querySelectorAll<HTMLElement>('.chip')]
      .find(({ textContent }) => textContent?.trim() === 'cm')
      ?.click();
    await expect.poll(() => find<HTMLInputElement>(root, '#sewn-width').value).toBe('106.68');
    expect(asked.at(-1)).toContain('sewn.width=106.68');
  });

  test('it is a field of the form around it', async () => {
    const form = document.createElement('form');
    const element = Object.assign(new WashElement(), { preset: ONE, name: 'wash' });
    form.append(element);
    document.body.replaceChildren(form);
    await expect.poll(() => new FormData(form).get('wash')).toContain('sewn.width=42');
    expect(form.checkValidity()).toBe(true);
  });

  test('it adds cloths, takes them away and clears the table', async () => {
    const root = await open();
    const button = (words: string) =>
      [...root.querySelectorAll('button')].find((one) => one.textContent?.includes(words))?.click();
    button('Add a cloth');
    await expect.poll(() => root.querySelectorAll('section.cloth').length).toBe(3);
    button('Take Flannel away');
    await expect.poll(() => root.querySelectorAll('section.cloth').length).toBe(2);
    button('start with an empty table');
    await expect.poll(() => root.querySelector('.result')).toBeNull();
    expect(find<HTMLInputElement>(root, '#c0-0-length-before').value).toBe('');
  });

  test('it prints the sheet alone and puts it away', async () => {
    const print = vi.spyOn(globalThis, 'print').mockImplementation(() => undefined);
    const root = await open();
    [...root.querySelectorAll('button')]
      .find((one) => one.textContent === 'Print a swatch sheet')
      ?.click();
    await expect.poll(() => print.mock.calls.length).toBe(1);
    expect(root.querySelector('.swatch-sheet')).not.toBeNull();
    globalThis.dispatchEvent(new Event('afterprint'));
    await expect.poll(() => root.querySelector('.swatch-sheet')).toBeNull();
  });

  test('it works on the device where the service is away, and says where neither is to be had', async () => {
    vi.stubGlobal(
      'fetch',
      vi.fn(async () => Promise.reject(new TypeError('no'))),
    );
    expect(readText(await open({ preset: ONE }), '[role=alert]')).toContain('your device');
    WashElement.source = {
      ...WashElement.source,
      loadCore: () => Promise.reject(new Error('none')),
    };
    const element = Object.assign(new WashElement(), { preset: ONE });
    document.body.replaceChildren(element);
    await expect.poll(() => element.shadowRoot?.textContent).toContain('no connection');
  });
});
