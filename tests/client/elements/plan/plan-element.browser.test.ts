import { afterEach, beforeEach, describe, expect, test, vi } from 'vitest';
import * as onDevice from '../../../../client/data/on-device.ts';
import { type PlanDetail, PlanElement } from '../../../../client/elements/plan/plan-element.ts';
import { planThrow } from '../../../support/plan-throw.ts';
import { find, readText, type } from '../../../support/render.ts';

const home = location.href;
let asked: string[] = [];
let isDown = false;

/** The service as the core would answer, or nobody at all. */
async function answer(url: string): Promise<Response> {
  asked.push(url);
  if (isDown) throw new TypeError('Failed to fetch');
  const outcome = onDevice.computePlan(new URL(url, location.href).search);
  if (outcome.ok) return Response.json(outcome.value);
  const errors = outcome.faults.map(({ path, ...fault }) => ({
    ...fault,
    pointer: `/${path.join('/')}`,
  }));
  return Response.json({ errors }, { status: 422 });
}

/** Puts an element on the page and waits for its first plan. */
async function open(change: Partial<PlanElement> = {}): Promise<PlanElement> {
  const element = Object.assign(new PlanElement(), change);
  document.body.replaceChildren(element);
  await settle(element);
  return element;
}

async function settle(element: PlanElement): Promise<void> {
  const isThere = () => shown(element).querySelector('.table') !== null;
  const isOpen = () => shown(element).querySelector('.busy, .waiting, .later') !== null;
  await expect.poll(() => isThere() && !isOpen()).toBe(true);
}

function shown(element: PlanElement): ShadowRoot {
  if (element.shadowRoot === null) throw new Error('The element has no root.');
  return element.shadowRoot;
}

const figures = (element: PlanElement) =>
  readText(shown(element), '.figures').replaceAll('\u00a0', ' ');
const alerts = (element: PlanElement) => readText(shown(element), '[role=alert]');

describe('PlanElement', () => {
  beforeEach(() => {
    asked = [];
    isDown = false;
    vi.stubGlobal('fetch', vi.fn(answer));
    PlanElement.source = { api: '', patience: 4000, loadCore: async () => onDevice };
    if (customElements.get('ragbloom-plan') === undefined) {
      customElements.define('ragbloom-plan', PlanElement);
    }
  });
  afterEach(() => {
    vi.unstubAllGlobals();
    vi.restoreAllMocks();
    localStorage.clear();
    history.replaceState(null, '', home);
  });

  test('a PlanElement has a finished plan on the table before anything is typed', async () => {
    const element = await open();
    const { columns, rows } = planThrow().grid;
    expect(figures(element)).toContain(`${columns} × ${rows}`);
    expect(alerts(element)).toBe('');
  });

  test('a PlanElement plans what the attribute preset or the property request asks for', async () => {
    const one = await open({ preset: 'target.columns=3&target.rows=4&block.cut=8' });
    expect(figures(one)).toContain('3 × 4');
    const other = await open({ request: { target: { columns: 4, rows: 5 }, block: { cut: 9 } } });
    expect(figures(other)).toContain('4 × 5');
  });

  test('a PlanElement tells its host each plan, from inside its shadow', async () => {
    const details: PlanDetail[] = [];
    const listen = (event: Event) => {
      expect(event.composed && event.bubbles).toBe(true);
      details.push((event as CustomEvent<PlanDetail>).detail);
    };
    document.body.addEventListener('ragbloom-plan', listen);
    await open();
    document.body.removeEventListener('ragbloom-plan', listen);
    expect(details).toHaveLength(1);
    expect(details[0]?.from).toBe('service');
    expect(details[0]?.answer).toEqual(JSON.parse(JSON.stringify(planThrow())));
  });

  test('a PlanElement says what a host got wrong, keeps it and plans the rest', async () => {
    const element = await open({ preset: 'target.columns=3&target.rows=4&washes=999&colour=red' });
    expect(figures(element)).toContain('3 × 4');
    expect(alerts(element)).toContain('washes');
    expect(alerts(element)).toContain('colour');
    expect(element.preset).toContain('washes=999');
  });

  test('a PlanElement tells each thing that a host got wrong once', async () => {
    const element = await open({ preset: 'target.width=40&block.seam=wide&unit=in&unit=cm' });
    const told = [...shown(element).querySelectorAll('[role=alert] li small')].map(
      ({ textContent }) => textContent,
    );
    expect(told.length).toBeGreaterThan(1);
    expect(new Set(told).size).toBe(told.length);
    expect(told).toContain('unit');
  });

  test('a PlanElement says what it read in a wish, until the words are changed', async () => {
    const element = await open();
    type(shown(element), '#words', 'a throw, 40 by 50 inches');
    find(shown(element), '.go').click();
    await expect
      .poll(() => shown(element).querySelector('#words-unit')?.textContent)
      .toMatch(/^Read as 40 × 50.in\./);
    type(shown(element), '#words', 'a throw, 41');
    await element.updateComplete;
    expect(shown(element).querySelector('#words-unit')).toBeNull();
  });

  test('a PlanElement fetches ahead what plans without a network where it is asked to or the page is its own', async () => {
    const loadCore = vi.fn(async () => onDevice);
    PlanElement.source = { ...PlanElement.source, loadCore };
    await open({ embedded: true });
    await new Promise((done) => setTimeout(done, 100));
    expect(loadCore).not.toHaveBeenCalled();
    await open({ embedded: true, ahead: true });
    await expect.poll(() => loadCore.mock.calls.length).toBe(1);
    await open({ address: true });
    await expect.poll(() => loadCore.mock.calls.length).toBe(2);
  });

  test('a PlanElement says that the plan shown is of before where a new one cannot be had', async () => {
    PlanElement.source = {
      ...PlanElement.source,
      loadCore: () => Promise.reject(new Error('none')),
    };
    const element = await open({ preset: 'target.width=40&target.height=50' });
    const before = figures(element);
    isDown = true;
    type(shown(element), '#target-width', '60');
    await expect.poll(() => alerts(element)).toContain('the one from before');
    expect(figures(element)).toBe(before);
  });

  test('a PlanElement bears a host that hands it anything at all', async () => {
    for (const request of [7, 'text', [], { target: 5 }, { target: { width: {} } }]) {
      const element = await open(JSON.parse(JSON.stringify({ request })));
      expect(figures(element)).toMatch(/\d × \d/);
    }
  });

  test('a PlanElement plans again when typing rests, and asks once', async () => {
    const element = await open({ preset: 'target.width=40&target.height=50' });
    asked = [];
    for (const text of ['4', '44', '44 1/2']) type(shown(element), '#target-width', text);
    await expect.poll(() => asked.length).toBe(1);
    await settle(element);
    expect(asked[0]).toContain('target.width=44%201%2F2');
    expect(find<HTMLInputElement>(shown(element), '#target-width').value).toBe('44 1/2');
  });

  test('a PlanElement leaves what was typed, says what is wrong, and keeps the last plan', async () => {
    const element = await open({ preset: 'target.width=40&target.height=50' });
    const before = figures(element);
    type(shown(element), '#target-width', 'wide');
    await expect.poll(() => shown(element).querySelector('.fault')?.textContent).toMatch(/“wide”/);
    expect(find<HTMLInputElement>(shown(element), '#target-width').value).toBe('wide');
    expect(figures(element)).toBe(before);
    type(shown(element), '#target-width', '');
    await expect
      .poll(() => shown(element).querySelector('.fault')?.textContent)
      .toMatch(/Type a number/);
  });

  test('a PlanElement understands a wish in words, its unit too', async () => {
    const element = await open();
    type(shown(element), '#words', 'a throw for the reading room, about 100 by 120 cm');
    find(shown(element), '.go').click();
    await expect
      .poll(() => shown(element).querySelector<HTMLInputElement>('#target-width')?.value)
      .toBe('100');
    await settle(element);
    expect(figures(element)).toContain(' cm');
    expect(readText(shown(element), '.wish .chip:has(:checked)')).toBe('cm');
  });

  test('a PlanElement takes layers, prints, washes and blocks from a wish, and keeps its unit for the next', async () => {
    const element = await open();
    const say = (words: string) => {
      type(shown(element), '#words', words);
      find(shown(element), '.go').click();
    };
    say('120 x 150 cm, 3 layers, 6 prints, washed twice, 20 cm squares, scalloped');
    await expect.poll(() => asked.at(-1)).toContain('block.cut=20');
    for (const part of ['unit=cm', 'layers.0.prints=6', 'layers.1.role=middle', 'washes=2'])
      expect(asked.at(-1)).toContain(part);
    expect(readText(shown(element), '#words-unit')).toContain('Passed over: scalloped.');
    await settle(element);
    say('100 by 130');
    await expect.poll(() => asked.at(-1)).toContain('target.width=100');
    expect(asked.at(-1)).toContain('unit=cm');
  });

  test('a PlanElement asks for an infant while the last wish says so, and for the blocks it names', async () => {
    const element = await open();
    const say = (words: string) => {
      type(shown(element), '#words', words);
      find(shown(element), '.go').click();
    };
    say('baby blanket, 51 by 61, 9 inch squares, half inch seams');
    await expect
      .poll(() => asked.at(-1))
      .toMatch(/width=51&target.height=61&infant=true&block.cut=9&block.seam=1%2F2$/);
    await expect.poll(() => shown(element).textContent).toContain('Not for a sleeping baby');
    say('52 by 62');
    await expect.poll(() => asked.at(-1)).toMatch(/width=52&target.height=62/);
    expect(asked.at(-1)).not.toContain('infant');
    await expect.poll(() => shown(element).textContent).not.toContain('Not for a sleeping baby');
  });

  test('a PlanElement says where a wish holds no size', async () => {
    const element = await open();
    type(shown(element), '#words', 'something nice');
    find(shown(element), '.go').click();
    await expect
      .poll(() => shown(element).querySelector('#words-fault')?.textContent)
      .toMatch(/no size/);
    expect(find<HTMLInputElement>(shown(element), '#words').value).toBe('something nice');
  });

  test('a PlanElement switches the unit and loses nothing on the way back', async () => {
    const element = await open({ preset: 'target.width=40 1/2&target.height=50' });
    const value = () => find<HTMLInputElement>(shown(element), '#target-width').value;
    find(shown(element), 'input[name=unit]:not(:checked)').click();
    await settle(element);
    await expect.poll(value).toBe('102.87');
    find(shown(element), 'input[name=unit]:not(:checked)').click();
    await settle(element);
    expect(value()).toBe('40 1/2');
  });

  test('a PlanElement has the device work it out when the service is down, and says so', async () => {
    isDown = true;
    const element = await open();
    expect(alerts(element)).toContain('your device');
    expect(figures(element)).toMatch(/\d × \d/);
  });

  test('a PlanElement offers to try again when neither is to be had', async () => {
    isDown = true;
    PlanElement.source = {
      ...PlanElement.source,
      loadCore: () => Promise.reject(new Error('none')),
    };
    const element = Object.assign(new PlanElement());
    document.body.replaceChildren(element);
    await expect.poll(() => shown(element).querySelector('.notice button')).not.toBeNull();
    isDown = false;
    find(shown(element), '.notice button').click();
    await settle(element);
    expect(figures(element)).toMatch(/\d × \d/);
  });

  test('a PlanElement leads to each of the other plans that it offers', async () => {
    const element = await open({ preset: 'target.width=47&target.height=61' });
    const options = [...shown(element).querySelectorAll<HTMLElement>('.options button')];
    const wanted = options.map((option) => readText(option, 'small').split(',')[0] ?? '');
    for (const [index, grid] of wanted.entries()) {
      const again = await open({ preset: 'target.width=47&target.height=61' });
      shown(again).querySelectorAll<HTMLElement>('.options button')[index]?.click();
      await settle(again);
      expect(figures(again)).toContain(grid);
    }
  });

  test('a PlanElement touches neither address nor storage unless it is asked to', async () => {
    const { length } = history;
    const set = vi.spyOn(Storage.prototype, 'setItem');
    const element = await open();
    find(shown(element), '.blocks .chip:last-child input').click();
    await settle(element);
    find(shown(element), '.work input').click();
    expect([location.href, history.length, set.mock.calls.length]).toEqual([home, length, 0]);
    const embedded = await open({ address: true, remember: true, embedded: true });
    find(shown(embedded), '.blocks .chip:last-child input').click();
    await settle(embedded);
    find(shown(embedded), '.work input').click();
    expect([location.href, history.length, set.mock.calls.length]).toEqual([home, length, 0]);
  });

  test('a PlanElement with address keeps the plan there, and goes back with it', async () => {
    const element = await open({ address: true });
    const first = figures(element);
    find(shown(element), '.blocks .chip:nth-child(2) input').click();
    await expect.poll(() => location.search).toContain('block.cut=6');
    await settle(element);
    expect(figures(element)).not.toBe(first);
    history.back();
    await expect.poll(() => figures(element)).toBe(first);
  });

  test('a PlanElement with remember keeps ticks for the plan they were made on', async () => {
    const element = await open({ remember: true });
    find(shown(element), '.work input').click();
    await element.updateComplete;
    expect(readText(shown(element), '.work header .soft')).toMatch(/^1 of/);
    const again = await open({ remember: true });
    expect(readText(shown(again), '.work header .soft')).toMatch(/^1 of/);
    const other = await open({ remember: true, preset: 'target.size=lap' });
    expect(readText(shown(other), '.work header .soft')).toMatch(/^0 of/);
  });

  test('a PlanElement that is taken off the page while it asks goes on when it is back', async () => {
    const element = new PlanElement();
    document.body.replaceChildren(element);
    await element.updateComplete;
    element.remove();
    document.body.append(element);
    await settle(element);
    expect(figures(element)).toMatch(/\d × \d/);
  });

  test('a PlanElement asks the service that its attribute api names', async () => {
    await open({ api: 'https://planner.example' });
    expect(asked[0]).toMatch(/^https:\/\/planner\.example\/v1\/plan\?/);
  });
});
