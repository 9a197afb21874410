import { html, LitElement } from 'lit';
import { describe, expect, test, vi } from 'vitest';
import { DrawnElement } from '../../../client/host/drawn-element.ts';

const MANNERS = {
  wish: {},
  secret: { attribute: false },
  isOpen: { attribute: 'open', type: Boolean, reflect: true },
  name: { reflect: true },
  inner: { state: true },
} as const;

/** What both elements tell of: what was drawn, and what had changed each time. */
interface Watched extends HTMLElement {
  wish: unknown;
  secret: unknown;
  isOpen: unknown;
  name: unknown;
  inner: unknown;
  updateComplete: Promise<unknown> | undefined;
  readonly seen: readonly string[];
}

function watch(base: typeof DrawnElement | typeof LitElement): new () => Watched {
  // Both bases have the same methods, which is what is tried here.
  class Watching extends (base as typeof DrawnElement) {
    static override properties = MANNERS;
    declare wish: unknown;
    declare secret: unknown;
    declare isOpen: unknown;
    declare name: unknown;
    declare inner: unknown;
    readonly seen: string[] = [];
    constructor() {
      super();
      this.isOpen = false;
    }
    override willUpdate(changed: Map<PropertyKey, unknown>): void {
      if (changed.has('wish')) this.inner = `for ${this.wish}`;
      this.seen.push([...changed].map(([key, was]) => `${String(key)} was ${was}`).join(', '));
    }
    override render() {
      return html`<p>${this.wish} ${this.secret} ${this.isOpen} ${this.name} ${this.inner}</p>`;
    }
    override updated(): void {
      this.seen.push(`${this.hasUpdated} ${this.renderRoot.textContent}`);
    }
  }
  return Watching as unknown as new () => Watched;
}

const drawn = watch(DrawnElement);
const lit = watch(LitElement);
customElements.define('x-drawn', drawn);
customElements.define('x-lit', lit);

type Step = (element: Watched) => unknown;
const STEPS: readonly (readonly [name: string, steps: readonly Step[]])[] = [
  ['nothing', []],
  ['a property', [(one) => (one.wish = 'lap')]],
  ['the same again', [(one) => (one.wish = 'lap'), (one) => (one.wish = 'lap')]],
  ['several at once', [(one) => Object.assign(one, { wish: 'a', secret: 1, inner: 'own' })]],
  ['an attribute', [(one) => one.setAttribute('wish', 'throw')]],
  [
    'an attribute that goes',
    [(one) => one.setAttribute('wish', 'x'), (one) => one.removeAttribute('wish')],
  ],
  ['a flag', [(one) => one.setAttribute('open', ''), (one) => one.removeAttribute('open')]],
  ['a flag from inside', [(one) => (one.isOpen = true), (one) => (one.isOpen = false)]],
  ['a name written back', [(one) => (one.name = 'size'), (one) => (one.name = null)]],
  ['an empty name', [(one) => (one.name = '')]],
  ['what has no attribute', [(one) => one.setAttribute('secret', '1')]],
  ['what is its own', [(one) => one.setAttribute('inner', '1')]],
  ['leaving and coming back', [(one) => one.remove(), (one) => document.body.append(one)]],
  ['a change while it is away', [(one) => one.remove(), (one) => (one.wish = 'king')]],
];

async function play(element: Watched, steps: readonly Step[]): Promise<readonly string[]> {
  document.body.append(element);
  const told: string[] = [];
  for (const step of [() => {}, ...steps]) {
    step(element);
    await element.updateComplete;
    told.push(element.outerHTML.replaceAll('x-lit', 'x-drawn'));
  }
  element.remove();
  return [...told, ...element.seen];
}

describe('DrawnElement', () => {
  test.each(STEPS)('DrawnElement does as LitElement does on %s', async (_name, steps) => {
    expect(await play(new drawn(), steps)).toEqual(await play(new lit(), steps));
  });

  test('DrawnElement takes what a page set before it was defined, as LitElement does', async () => {
    const tell = async (tag: string, base: typeof DrawnElement | typeof LitElement) => {
      const early = Object.assign(document.createElement(tag), { wish: 'early', isOpen: true });
      document.body.append(early);
      customElements.define(tag, watch(base));
      await (early as unknown as Watched).updateComplete;
      early.remove();
      return (early as unknown as Watched).seen.at(-1);
    };
    const seen = await tell('x-early-drawn', DrawnElement);
    expect(seen).toBe(await tell('x-early-lit', LitElement));
    expect(seen).toContain('early  true');
  });

  test('DrawnElement draws after a fault in what it is drawn from', async () => {
    class Faulty extends DrawnElement {
      static override properties = { wish: {} };
      declare wish: string;
      override render() {
        if (this.wish === 'bad') throw new Error('bad');
        return html`${this.wish}`;
      }
    }
    customElements.define('x-faulty', Faulty);
    const element = new Faulty();
    element.wish = 'bad';
    document.body.append(element);
    await expect(element.updateComplete).rejects.toThrow('bad');
    element.wish = 'good';
    await element.updateComplete;
    expect(element.renderRoot.textContent).toBe('good');
  });

  test('DrawnElement draws at once where that is asked, and then not again', async () => {
    const render = vi.fn(() => html``);
    class Eager extends DrawnElement {
      static override properties = { wish: {} };
      declare wish: string;
      override render = render;
    }
    customElements.define('x-eager', Eager);
    const element = new Eager();
    element.performUpdate();
    document.body.append(element);
    await element.updateComplete;
    element.wish = 'now';
    element.performUpdate();
    expect(render).toHaveBeenCalledTimes(2);
    await element.updateComplete;
    expect(render).toHaveBeenCalledTimes(2);
  });

  test('DrawnElement wears one sheet, however many there are of it', () => {
    const styleSheet = new CSSStyleSheet();
    class Worn extends DrawnElement {
      static override styles = { styleSheet };
      override render() {
        return html``;
      }
    }
    customElements.define('x-worn', Worn);
    const elements = [new Worn(), new Worn()];
    document.body.append(...elements);
    expect(elements.map((one) => one.renderRoot.adoptedStyleSheets)).toEqual([
      [styleSheet],
      [styleSheet],
    ]);
  });
});
