import { type RootPart, render, type TemplateResult } from 'lit';

/** How a property of an element is set from outside. */
export interface PropertyManner {
  /** Its attribute: its own name in small letters, another, or with `false` none. */
  readonly attribute?: boolean | string;
  /** With `Boolean` the attribute says yes by being there; else its text is the value, `null` where there is none. */
  readonly type?: unknown;
  /** Whether it is written back to its attribute. */
  readonly reflect?: boolean;
  /** The element's own: nothing of it shows outside. */
  readonly state?: boolean;
}

/** On a server there are no elements; their classes can be imported there all the same. */
const Root = globalThis.HTMLElement ?? class {};

/**
 * An element that is drawn anew, once for however many changes, when one of its properties has changed. It has of
 * `LitElement` what ours use, under the same names, which leaves 1.4 kB of what every page loads.
 */
export abstract class DrawnElement extends Root {
  static properties: Readonly<Record<string, PropertyManner>> = {};
  static styles: { readonly styleSheet?: CSSStyleSheet | undefined } = {};

  declare renderRoot: ShadowRoot;
  hasUpdated = false;
  /** When what has changed is drawn. */
  updateComplete: Promise<void> | undefined;

  /** Values of the properties. */
  readonly #values: Record<string, unknown> = {};
  /** What a page set before the element was defined. */
  readonly #early: Record<string, unknown> = {};
  /** Properties that have changed since it was last drawn, with what they were. */
  #changed = new Map<PropertyKey, unknown>();
  /** Whether it will be drawn; until it stands in a page, its page says when. */
  #isAsked = true;
  #part: RootPart | undefined;

  static {
    // What the browser asks each class once, when it is registered and before there is one of it.
    Object.defineProperty(DrawnElement, 'observedAttributes', {
      get(this: typeof DrawnElement) {
        DrawnElement.#declare(this);
        return listAttributes(this.properties).map(([, attribute]) => attribute);
      },
    });
  }

  static #declare({ properties, prototype }: typeof DrawnElement): void {
    for (const name of Object.keys(properties)) {
      Object.defineProperty(prototype, name, {
        get(this: DrawnElement) {
          return this.#values[name];
        },
        set(this: DrawnElement, value: unknown) {
          this.#set(name, value);
        },
      });
    }
  }

  /** The element from its properties. */
  abstract render(): TemplateResult;

  constructor() {
    super();
    for (const name of Object.keys(this.#properties)) {
      if (!Object.hasOwn(this, name)) continue;
      this.#early[name] = Reflect.get(this, name);
      Reflect.deleteProperty(this, name);
    }
  }

  connectedCallback(): void {
    if (this.renderRoot === undefined) {
      this.renderRoot = this.attachShadow({ mode: 'open' });
      const { styleSheet } = (this.constructor as typeof DrawnElement).styles;
      if (styleSheet) this.renderRoot.adoptedStyleSheets = [styleSheet];
      this.#drawSoon();
    }
    this.#part?.setConnected(true);
  }

  disconnectedCallback(): void {
    this.#part?.setConnected(false);
  }

  attributeChangedCallback(changed: string, _before: string | null, text: string | null): void {
    for (const [name, attribute, { type }] of listAttributes(this.#properties)) {
      if (attribute !== changed) continue;
      Reflect.set(this, name, type === Boolean ? text !== null : text);
    }
  }

  /** What is to be done before it is drawn; what this changes is drawn as well. */
  willUpdate(_changed: Map<PropertyKey, unknown>): void {}

  /** What is to be done once it is drawn. */
  updated(): void {}

  /** Draws at once, if anything has changed. */
  performUpdate(): void {
    if (!this.#isAsked || this.renderRoot === undefined) return;
    const template = this.#prepare();
    const { isConnected } = this;
    this.#part = render(template, this.renderRoot, { host: this, isConnected });
    this.hasUpdated = true;
    this.updated();
  }

  get #properties(): typeof DrawnElement.properties {
    return (this.constructor as typeof DrawnElement).properties;
  }

  #set(name: string, value: unknown): void {
    const before = this.#values[name];
    if (Object.is(before, value)) return;
    this.#values[name] = value;
    if (!this.#changed.has(name)) this.#changed.set(name, before);
    if (!this.#isAsked) this.#drawSoon();
  }

  #drawSoon(): void {
    this.#isAsked = true;
    this.updateComplete = Promise.resolve().then(() => this.performUpdate());
  }

  #prepare(): TemplateResult {
    try {
      if (!this.hasUpdated) Object.assign(this, this.#early);
      this.willUpdate(this.#changed);
      const template = this.render();
      this.#reflect();
      return template;
    } finally {
      // Whatever failed, the next change is drawn.
      this.#changed = new Map();
      this.#isAsked = false;
    }
  }

  #reflect(): void {
    for (const [name, attribute, { reflect, type }] of listAttributes(this.#properties)) {
      const value = this.#values[name];
      if (!reflect || !this.#changed.has(name)) continue;
      if (type === Boolean) this.toggleAttribute(attribute, Boolean(value));
      else if (value == null) this.removeAttribute(attribute);
      else this.setAttribute(attribute, `${value}`);
    }
  }
}

type Listed = readonly [name: string, attribute: string, manner: PropertyManner];

/** The properties that have an attribute, with its name. */
function listAttributes(properties: typeof DrawnElement.properties): readonly Listed[] {
  return Object.entries(properties)
    .filter(([, { attribute, state }]) => attribute !== false && !state)
    .map(([name, manner]) => [name, `${manner.attribute ?? name.toLowerCase()}`, manner]);
}
