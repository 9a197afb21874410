import { afterEach, beforeEach, describe, expect, test, vi } from 'vitest';
import * as csv from '../../../../client/data/csv-tool.ts';
import * as onDevice from '../../../../client/data/stash-on-device.ts';
import { type StashDetail, StashElement } from '../../../../client/elements/stash/stash-element.ts';
import { find, readText, type } from '../../../support/render.ts';

const home = location.href;
let asked: string[] = [];
let isDown = false;

/** The service as the core would answer, or nobody at all. */
async function answer(url: string): Promise<Response> {
  asked.push(url);
  if (isDown) throw new TypeError('Failed to fetch');
  const outcome = onDevice.computeStash(new URL(url, location.href).search);
  if (outcome.ok) return Response.json(outcome.value);
  const errors = outcome.faults.map(({ path, ...fault }) => ({
    ...fault,
    pointer: `/${path.join('/')}`,
  }));
  return Response.json({ errors }, { status: 422 });
}

async function open(change: Partial<StashElement> = {}): Promise<ShadowRoot> {
  const element = Object.assign(new StashElement(), change);
  document.body.replaceChildren(element);
  await element.updateComplete;
  if (element.shadowRoot === null) throw new Error('The element has no root.');
  await settle(element.shadowRoot);
  return element.shadowRoot;
}

async function settle(root: ShadowRoot): Promise<void> {
  await expect.poll(() => root.querySelector('.busy')).toBeNull();
}

const cell = (root: ShadowRoot, name: string) =>
  find<HTMLInputElement>(root, `#cell-${name}`).value;

describe('StashElement', () => {
  beforeEach(() => {
    asked = [];
    isDown = false;
    vi.stubGlobal('fetch', vi.fn(answer));
    const loadCsv = async () => csv;
    StashElement.source = { api: '', patience: 4000, loadCore: async () => onDevice, loadCsv };
    if (customElements.get('ragbloom-stash') === undefined) {
      customElements.define('ragbloom-stash', StashElement);
    }
  });
  afterEach(() => {
    vi.unstubAllGlobals();
    localStorage.clear();
    history.replaceState(null, '', home);
  });

  test('has an answer on the table before anything is typed, and tells its host', async () => {
    const details: StashDetail[] = [];
    const listen = (event: Event) => details.push((event as CustomEvent<StashDetail>).detail);
    document.addEventListener('ragbloom-stash', listen);
    const root = await open();
    document.removeEventListener('ragbloom-stash', listen);
    expect(readText(root, '.figures')).toMatch(/\d/);
    expect(details.map(({ from }) => from)).toEqual(['service']);
  });

  test('touches neither address nor storage unless it is told to', async () => {
    const root = await open();
    type(root, '#cell-0-id', 'Mine');
    await expect.poll(() => asked.length).toBe(2);
    await settle(root);
    expect([location.href, localStorage.length]).toEqual([home, 0]);
  });

  test('keeps what was answered in the address, and what was typed on the device', async () => {
    const root = await open({ address: true, remember: true });
    type(root, '#cell-0-id', 'Mine');
    await expect.poll(() => location.search).toContain('pieces.0.id=Mine');
    type(root, '#cell-0-width', 'wide');
    await expect.poll(() => root.querySelector('.fault')).not.toBeNull();
    const again = await open({ address: true, remember: true });
    expect([cell(again, '0-id'), cell(again, '0-width')]).toEqual(['Mine', 'wide']);
  });

  test('asks once for what is typed in one go', async () => {
    const root = await open();
    for (const typed of ['4', '43', '43 ']) type(root, '#cell-0-width', typed);
    await expect.poll(() => asked.length).toBe(2);
    await settle(root);
    expect(asked).toHaveLength(2);
  });

  test('has the device work it out where the service is silent', async () => {
    isDown = true;
    const root = await open();
    expect(readText(root, '.figures')).toMatch(/\d/);
    expect(readText(root, '[role=alert]')).toContain('your device');
  });

  test('says so where nobody answers, and asks again', async () => {
    isDown = true;
    StashElement.source = {
      ...StashElement.source,
      loadCore: () => Promise.reject(new Error('none')),
    };
    const root = await open();
    expect(readText(root, '[role=alert]')).toContain('cannot be reached');
    isDown = false;
    find(root, '[role=alert] button').click();
    await expect.poll(() => root.querySelector('.figures')).not.toBeNull();
  });

  test('empties the table without asking, and puts back what was there', async () => {
    const root = await open();
    const before = cell(root, '0-id');
    find(root, '.invented button').click();
    await expect.poll(() => root.querySelector('.waiting')).not.toBeNull();
    expect(asked).toHaveLength(1);
    find(root, '.notice.quiet button').click();
    await expect.poll(() => root.querySelector('.figures')).not.toBeNull();
    expect(cell(root, '0-id')).toBe(before);
  });

  test('takes what its host gives', async () => {
    const given = 'pieces.0.id=Ours&pieces.0.role=top&pieces.0.width=44&pieces.0.length=90';
    const root = await open({ stash: given });
    expect(cell(root, '0-id')).toBe('Ours');
  });

  test('stops asking when it is taken off the page', async () => {
    const root = await open();
    type(root, '#cell-0-width', '43');
    document.body.replaceChildren();
    await new Promise((done) => setTimeout(done, 500));
    expect(asked).toHaveLength(1);
  });
});
