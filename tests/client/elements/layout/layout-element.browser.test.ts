import { afterEach, beforeEach, describe, expect, test, vi } from 'vitest';
import * as onDevice from '../../../../client/data/layout-on-device.ts';
import type { LayoutDetail } from '../../../../client/elements/layout/layout-context.ts';
import { LayoutElement } from '../../../../client/elements/layout/layout-element.ts';
import { answerAs, serve } from '../../../support/answering.ts';
import { find, readText, type } from '../../../support/render.ts';

const TAG = 'ragbloom-layout';
const home = location.pathname;
const FOUR =
  'columns=4&rows=4&prints.0.id=Moss&prints.1.id=Rust&prints.2.id=Oat&prints.3.id=Fog&touch=sides';
let asked: readonly string[] = [];

const inside = (element: LayoutElement): ShadowRoot => {
  if (element.shadowRoot === null) throw new Error('The element has no root.');
  return element.shadowRoot;
};
const settle = (element: LayoutElement) =>
  expect.poll(() => inside(element).querySelector('.table:not(.busy) td')).not.toBeNull();

async function open(attributes = `preset="${FOUR.replaceAll('&', '&amp;')}"`) {
  document.body.innerHTML = `<ragbloom-layout ${attributes}></ragbloom-layout>`;
  const element = find<LayoutElement>(document.body, TAG);
  await settle(element);
  return element;
}

const cell = (element: LayoutElement, place: number) =>
  find(inside(element), `[data-place="${place}"]`);
const readCells = (element: LayoutElement) =>
  [...inside(element).querySelectorAll('td[data-place]')]
    .map(({ textContent }) => textContent)
    .join('');

async function tap(element: LayoutElement, ...places: readonly number[]): Promise<void> {
  for (const place of places) {
    cell(element, place).click();
    await element.updateComplete;
  }
}

async function press(element: LayoutElement, key: string, init: KeyboardEventInit = {}) {
  const target = inside(element).activeElement ?? cell(element, 0);
  const event = new KeyboardEvent('keydown', { key, bubbles: true, cancelable: true, ...init });
  target.dispatchEvent(event);
  await element.updateComplete;
}

async function push(element: LayoutElement, label: string): Promise<void> {
  const found = [...inside(element).querySelectorAll('button')].find(
    ({ textContent }) => textContent?.trim() === label,
  );
  if (found === undefined) throw new Error(`No button says ${label}.`);
  found.click();
  await settle(element);
}

const said = (element: LayoutElement) => readText(inside(element), '[role=status]');

describe('LayoutElement', () => {
  beforeEach(() => {
    asked = serve(answerAs(onDevice.computeLayout));
    LayoutElement.source = { api: '', patience: 4000, loadCore: async () => onDevice };
    if (customElements.get(TAG) === undefined) customElements.define(TAG, LayoutElement);
  });
  afterEach(() => {
    document.body.replaceChildren();
    vi.unstubAllGlobals();
    history.replaceState(null, '', home);
  });

  test('two taps change two blocks, and what touches is told without asking anybody', async () => {
    const element = await open();
    const before = readCells(element);
    const other = [...before].findIndex((letter, at) => at > 5 && letter !== before[0]);
    await tap(element, 0, other);
    const after = readCells(element);
    expect([after[0], after[other]]).toEqual([before[other], before[0]]);
    expect(said(element)).toMatch(/^A1 and [B-D]\d changed places\./);
    expect(asked).toHaveLength(1);
    await push(element, 'Undo');
    expect(readCells(element)).toBe(before);
    await push(element, 'Redo');
    expect(readCells(element)).toBe(after);
    expect(asked).toHaveLength(1);
  });

  test('keys alone move, take up, pin, undo and do again', async () => {
    const element = await open();
    const before = readCells(element);
    cell(element, 0).focus();
    await press(element, 'ArrowRight');
    expect(inside(element).activeElement).toBe(cell(element, 1));
    await press(element, 'End', { ctrlKey: true });
    expect(inside(element).activeElement).toBe(cell(element, 15));
    await press(element, 'p');
    expect(cell(element, 15).ariaLabel).toContain('pinned');
    await press(element, 'Enter');
    expect(said(element)).toContain('D4 is pinned and stays');
    await press(element, 'ArrowLeft');
    await press(element, ' ');
    await press(element, 'Home', { ctrlKey: true });
    await press(element, 'Enter');
    const after = readCells(element);
    expect([after[0], after[14]]).toEqual([before[14], before[0]]);
    await press(element, 'z', { ctrlKey: true });
    expect(readCells(element)).toBe(before);
    await press(element, 'Z', { ctrlKey: true, shiftKey: true });
    expect(readCells(element)).toBe(after);
    expect(inside(element).querySelectorAll('td[tabindex="0"]')).toHaveLength(1);
  });

  test('a finger that rests on a block pins it, and the tap that follows takes up nothing', async () => {
    const element = await open();
    const before = readCells(element);
    await tap(element, 9);
    const touch = { bubbles: true, composed: true, pointerType: 'touch' };
    const block = find(cell(element, 0), 'b');
    block.dispatchEvent(new PointerEvent('pointerdown', touch));
    await expect.poll(() => cell(element, 0).ariaLabel).toContain('pinned');
    block.dispatchEvent(new PointerEvent('pointerup', touch));
    block.click();
    await element.updateComplete;
    expect(readCells(element)).toBe(before);
    expect(said(element)).toContain('A1 is pinned');
    await tap(element, 1, 7);
    expect(readCells(element)[7]).toBe(before[1]);
  });

  test('another arrangement leaves pinned blocks where they are', async () => {
    const element = await open();
    const before = readCells(element);
    cell(element, 0).focus();
    for (const key of ['ArrowDown', 'ArrowDown', 'ArrowRight', 'ArrowRight', 'p']) {
      await press(element, key);
    }
    for (const _time of [1, 2, 3]) {
      await push(element, 'Another arrangement');
      expect(readCells(element)[10]).toBe(before[10]);
    }
    expect(readCells(element)).not.toBe(before);
  });

  test('a link is this very grid, pins and all', async () => {
    const element = await open(`preset="${FOUR.replaceAll('&', '&amp;')}" address`);
    cell(element, 0).focus();
    await press(element, 'p');
    await tap(element, 1, 7);
    const [cells, link] = [readCells(element), location.href];
    document.body.replaceChildren();
    history.replaceState(null, '', home);
    history.replaceState(null, '', link);
    const again = await open('address');
    expect(readCells(again)).toBe(cells);
    expect(cell(again, 0).ariaLabel).toContain('pinned');
    type(inside(again), '#name-A', 'Fern');
    await expect.poll(() => decodeURIComponent(location.search)).toContain('prints.0.id=Fern');
    await expect.poll(() => location.hash.replaceAll(/[#-]/g, '')).toBe(cells);
    expect(readCells(again)).toBe(cells);
  });

  test('a fragment of other blocks is passed over, in the grid, the link, the form and the address', async () => {
    for (const other of ['#AB-BA', '#AAAA-AAAA-AAAA-AAAA']) {
      history.replaceState(null, '', `?${FOUR}${other}`);
      const element = await open('address name="layout"');
      expect(element.value).not.toContain('fixed');
      const link = find<HTMLAnchorElement>(inside(element), '[part=link]').href;
      expect(onDevice.computeLayout(new URL(link).search.slice(1)).ok).toBe(true);
      expect(new URL(link).search.slice(1)).toBe(element.value);
      await expect.poll(() => location.hash).toBe('');
      expect(readCells(element)).toHaveLength(16);
    }
  });

  test('an undone swap leaves names and colours that came after it, and asks nobody', async () => {
    const element = await open();
    const before = readCells(element);
    await tap(element, 0, 6);
    type(inside(element), '#name-A', 'Fern');
    const color = find<HTMLInputElement>(inside(element), '[type=color]');
    color.value = '#123456';
    color.dispatchEvent(new Event('change'));
    await expect.poll(() => asked.length).toBe(2);
    await settle(element);
    await push(element, 'Undo');
    expect(readCells(element)).toBe(before);
    expect(find<HTMLInputElement>(inside(element), '#name-A').value).toBe('Fern');
    expect(find<HTMLInputElement>(inside(element), '[type=color]').value).toBe('#123456');
    expect(asked).toHaveLength(2);
  });

  test('where the browser takes no more addresses, the host is told all the same', async () => {
    const element = await open(`preset="${FOUR.replaceAll('&', '&amp;')}" address`);
    const told = vi.fn();
    element.addEventListener(TAG, told);
    const replace = vi.spyOn(history, 'replaceState').mockImplementation(() => {
      throw new DOMException('Too many calls', 'SecurityError');
    });
    await tap(element, 0, 6);
    expect(replace).toHaveBeenCalled();
    replace.mockRestore();
    expect(told).toHaveBeenCalledOnce();
  });

  test('embedded, it touches neither address nor storage', async () => {
    const element = await open('address remember embedded');
    await tap(element, 0, 6);
    expect([location.pathname + location.search + location.hash, localStorage.length]).toEqual([
      home,
      0,
    ]);
  });

  test('tells its host of each answer, and of each change by hand', async () => {
    const told: LayoutDetail[] = [];
    const listen = (event: Event) => told.push((event as CustomEvent<LayoutDetail>).detail);
    document.addEventListener(TAG, listen);
    const element = await open();
    await tap(element, 0, 6);
    document.removeEventListener(TAG, listen);
    expect(told.map(({ cells }) => cells?.join(''))).toEqual([undefined, readCells(element)]);
    expect(new URLSearchParams(element.value).get('fixed.0')).toBe(readCells(element).slice(0, 4));
  });

  test('counts that do not sum are told with how many they miss, and the grid stays', async () => {
    const element = await open();
    const before = readCells(element);
    type(inside(element), '#count-A', '2');
    await expect
      .poll(() => readText(inside(element), '[part=prints]'))
      .toContain('2 blocks short.');
    expect(find<HTMLInputElement>(inside(element), '#count-B').value).toBe('4');
    expect(readCells(element)).toBe(before);
    const readCounts = () =>
      [...'ABCD'].map(
        (letter) => find<HTMLInputElement>(inside(element), `#count-${letter}`).value,
      );
    await push(element, 'Share out the difference');
    await expect.poll(() => readCells(element).split('A').length - 1).toBe(2);
    expect(readCounts()).toEqual(['2', '5', '5', '4']);
    await push(element, 'Undo');
    await expect
      .poll(() => readText(inside(element), '[part=prints]'))
      .toContain('2 blocks short.');
    expect(readCounts()).toEqual(['2', '4', '4', '4']);
    type(inside(element), '#count-B', '6');
    await settle(element);
    await expect.poll(() => readCells(element).split('B').length - 1).toBe(6);
  });

  test.each([
    ['columns=41&rows=4', /at most 40/],
    ['fixed.0=AAAA&fixed.1=.Q..&fixed.2=....&fixed.3=....', /Row B .*“Q”/],
    ['fixed.0=AAA&fixed.1=....&fixed.2=....&fixed.3=....', /Row A of the grid has more or fewer/],
    ['fixed.0=AAAA', /another number of rows/],
  ])(
    'what cannot be had of %s is told in one sentence, and the rest is laid',
    async (change, sentence) => {
      const rest = change.startsWith('columns') ? FOUR.replace(/columns=4&rows=4&/, '') : FOUR;
      const element = await open(`preset="${`${rest}&${change}`.replaceAll('&', '&amp;')}"`);
      await expect.poll(() => readText(inside(element), '.notice')).toMatch(sentence);
      expect(find(inside(element), '.notice ul').childElementCount).toBe(1);
    },
  );

  test('works where nobody answers, and goes on working', async () => {
    vi.stubGlobal('fetch', () => Promise.reject(new TypeError('Failed to fetch')));
    const element = await open();
    expect(readText(inside(element), '[part=notices]')).toContain('your device');
    const before = readCells(element);
    await push(element, 'Another arrangement');
    expect(readCells(element)).not.toBe(before);
  });

  test('locked or switched off, the grid is to look at', async () => {
    const element = await open(`preset="${FOUR.replaceAll('&', '&amp;')}" locked="fixed prints"`);
    const before = readCells(element);
    await tap(element, 0, 6);
    expect(readCells(element)).toBe(before);
    expect(find(inside(element), 'table').ariaReadOnly).toBe('true');
    expect(find<HTMLInputElement>(inside(element), '#name-A').readOnly).toBe(true);
    const off = await open('disabled');
    const grid = readCells(off);
    await tap(off, 0, 6);
    expect(readCells(off)).toBe(grid);
  });

  test('of a thousand and six hundred blocks, an edit makes a few rows anew and not the rest', async () => {
    const prints = FOUR.slice(FOUR.indexOf('prints'));
    const element = await open(
      `preset="columns=40&amp;rows=40&amp;${prints.replaceAll('&', '&amp;')}"`,
    );
    await tap(element, 0);
    const changed = new Set<number>();
    const observer = new MutationObserver((records) => {
      for (const { target } of records) {
        const near = target instanceof Element ? target : target.parentElement;
        const row = near?.closest('tr')?.rowIndex;
        if (row !== undefined) changed.add(row);
      }
    });
    const all = { attributes: true, childList: true, characterData: true, subtree: true };
    observer.observe(find(inside(element), 'tbody'), all);
    const other = [...readCells(element)].findIndex(
      (letter, at) => at > 820 && letter !== readCells(element)[0],
    );
    await tap(element, other);
    for (const record of observer.takeRecords()) {
      const near = record.target instanceof Element ? record.target : record.target.parentElement;
      changed.add(near?.closest('tr')?.rowIndex ?? -1);
    }
    observer.disconnect();
    expect(changed.size).toBeGreaterThan(1);
    expect(changed.size).toBeLessThanOrEqual(6);
  });
});
