import { afterEach, beforeEach, describe, expect, test, vi } from 'vitest';
import * as onDevice from '../../../../client/data/on-device.ts';
import {
  type CompareDetail,
  CompareElement,
} from '../../../../client/elements/compare/compare-element.ts';
import { answerAs, serve } from '../../../support/answering.ts';
import { find, readText, type } from '../../../support/render.ts';

const none = () => Promise.reject(new Error('none'));
const PAIR = 'a=target.size%3Dlap&b=target.size%3Dthrow';

function inside(element: CompareElement): ShadowRoot {
  if (element.shadowRoot === null) throw new Error('The element has no root.');
  return element.shadowRoot;
}

async function settle(element: CompareElement): Promise<void> {
  await element.updateComplete;
  await expect.poll(() => inside(element).querySelector('.comparison:not(.busy)')).not.toBeNull();
}

async function open(markup = `<ragbloom-compare preset="${PAIR}"></ragbloom-compare>`) {
  document.body.innerHTML = markup;
  const element = find<CompareElement>(document.body, 'ragbloom-compare');
  await settle(element);
  return element;
}

async function press(element: CompareElement, label: string): Promise<void> {
  const buttons = [...inside(element).querySelectorAll('button')];
  const button = buttons.find(({ textContent }) => textContent?.trim() === label);
  if (button === undefined) throw new Error(`No button says ${label}.`);
  button.click();
  await settle(element);
}

const heads = (element: CompareElement) =>
  readText(inside(element), 'tbody').replaceAll('\u00a0', ' ');

describe('CompareElement', () => {
  beforeEach(() => {
    serve(answerAs(onDevice.computePlan));
    CompareElement.source = { api: '', patience: 4000, loadCore: none };
    if (customElements.get('ragbloom-compare') === undefined) {
      customElements.define('ragbloom-compare', CompareElement);
    }
  });
  afterEach(() => {
    document.body.replaceChildren();
    vi.unstubAllGlobals();
    history.replaceState(null, '', location.pathname);
  });

  test('compares the plans of its preset', async () => {
    const element = await open();
    expect(heads(element)).toMatch(/Cloth in all 6⅛ yd 8¼ yd 2⅛ yd more/);
    expect(inside(element).querySelectorAll('.pair svg')).toHaveLength(2);
    expect(element.value).toBe(PAIR);
  });

  test('doubles a plan in one tap, and puts both into the address, which the back button undoes', async () => {
    const element = await open(
      '<ragbloom-compare preset="a=target.columns%3D4%26target.rows%3D5" address></ragbloom-compare>',
    );
    await press(element, 'Twice each way');
    expect(heads(element)).toMatch(/Blocks 20 80 60 more/);
    const { b } = Object.fromEntries(new URLSearchParams(location.search));
    expect(b).toContain('target.columns=8');
    history.back();
    await expect.poll(() => heads(element)).toMatch(/Blocks 20 –/);
  });

  test('says at its field that there is no plan in what was typed, and keeps it', async () => {
    const element = await open();
    type(inside(element), '#b', 'my other quilt');
    await settle(element);
    expect(readText(inside(element), '#b-fault')).toMatch(/^That is not the address of a plan/);
    expect(find<HTMLInputElement>(inside(element), '#b').value).toBe('my other quilt');
    expect(inside(element).querySelector('#a-fault')).toBeNull();
  });

  test('says at its field what is wrong with a plan', async () => {
    const element = await open();
    type(inside(element), '#a', '?target.size=lap&washes=0');
    await expect.poll(() => inside(element).querySelector('#a-fault')).not.toBeNull();
    expect(readText(inside(element), '#a-fault')).toMatch(/too small/);
  });

  test('changes places, tells both in centimetres, and tells its host', async () => {
    const details: CompareDetail[] = [];
    const take = (event: Event) => details.push((event as CustomEvent<CompareDetail>).detail);
    document.addEventListener('ragbloom-compare', take);
    const element = await open();
    document.removeEventListener('ragbloom-compare', take);
    const last = details.at(-1);
    expect([last?.a?.input.target.size, last?.b?.input.target.size]).toEqual(['lap', 'throw']);
    await press(element, 'Change places');
    expect(heads(element)).toMatch(/Cloth in all 8¼ yd 6⅛ yd 2⅛ yd less/);
    inside(element).querySelectorAll<HTMLInputElement>('[type=radio]')[1]?.click();
    await settle(element);
    expect(heads(element)).toMatch(/Width, washed [\d.]+ cm [\d.]+ cm/);
  });

  test('keeps a locked plan, whatever is asked of the other', async () => {
    const element = await open(`<ragbloom-compare preset="${PAIR}" locked="a"></ragbloom-compare>`);
    element.value = 'a=target.size%3Dking&b=target.size%3Dqueen';
    await settle(element);
    expect(element.value).toBe('a=target.size%3Dlap&b=target.size%3Dqueen');
    expect(find<HTMLInputElement>(inside(element), '#a').readOnly).toBe(true);
  });

  test('keeps plans and places apart when they change places while one is asked for', async () => {
    const element = await open();
    type(inside(element), '#b', '?target.columns=3&target.rows=3');
    await press(element, 'Change places');
    await expect.poll(() => heads(element)).toMatch(/Blocks 9 35 /);
    expect(element.value).toBe('a=target.columns%3D3%26target.rows%3D3&b=target.size%3Dlap');
  });

  test('puts nothing in the place of a locked plan', async () => {
    const element = await open(`<ragbloom-compare preset="${PAIR}" locked="b"></ragbloom-compare>`);
    const buttons = [...inside(element).querySelectorAll('button')];
    const shut = buttons
      .filter(({ disabled }) => disabled)
      .map(({ textContent }) => textContent?.trim());
    expect(shut).toEqual(['Change places', 'Twice as long', 'Twice each way']);
    await press(element, 'Twice as long').catch(() => undefined);
    expect(element.value).toBe(PAIR);
  });

  test('takes what was set before it was drawn', async () => {
    const element = document.createElement('ragbloom-compare') as CompareElement;
    element.value = PAIR;
    document.body.replaceChildren(element);
    await settle(element);
    expect(element.value).toBe(PAIR);
    expect(inside(element).querySelectorAll('.pair svg')).toHaveLength(2);
  });

  test('asks again where it was moved while it waited', async () => {
    const element = document.createElement('ragbloom-compare') as CompareElement;
    element.preset = PAIR;
    document.body.replaceChildren(element);
    await element.updateComplete;
    const room = document.createElement('div');
    document.body.append(room);
    room.append(element);
    await settle(element);
    expect(inside(element).querySelectorAll('.pair svg')).toHaveLength(2);
  });

  test('is worth nothing to a form before both plans are there', async () => {
    const element = await open(
      '<form><ragbloom-compare name="pair" preset="a=target.size%3Dlap"></ragbloom-compare></form>',
    );
    const form = find<HTMLFormElement>(document.body, 'form');
    expect([...new FormData(form)]).toEqual([]);
    await press(element, 'Twice as long');
    await element.updateComplete;
    expect(new FormData(form).get('pair')).toBe(element.value);
  });

  test('without a network says so, keeps what was typed and asks again', async () => {
    const element = await open();
    const before = heads(element);
    serve(() => Promise.reject(new TypeError('no network')));
    type(inside(element), '#b', '?target.size=queen');
    await expect.poll(() => readText(inside(element), '[role=alert]')).toMatch(/no connection/);
    expect(heads(element)).toBe(before);
    serve(answerAs(onDevice.computePlan));
    await press(element, 'Try again');
    await expect.poll(() => heads(element)).not.toBe(before);
  });

  test('speaks the language of the page', async () => {
    const element = await open(
      `<div lang="de"><ragbloom-compare preset="${PAIR}"></ragbloom-compare></div>`,
    );
    expect(readText(inside(element), 'h2')).toBe('Zwei Pläne');
  });
});
