import { html, type PropertyDeclarations, type TemplateResult } from 'lit';
import { chooseLanguage, loadText, type TextSource } from '../text/languages.ts';
import { DrawnElement } from './drawn-element.ts';
import { isUnder } from './is-under.ts';
import { type FormFacts, tellForm } from './tell-form.ts';

/**
 * What every element owes to the page around it: the attributes, the language, the form.
 *
 * Attributes and properties
 * - `preset`: what to ask first, as a flat query of the endpoint such as `target.width=40&target.height=50`.
 * - `request` (property only): the same as an object of the API's contract; it wins over `preset`.
 *   What cannot be read in either is told on the page; all the rest is used.
 * - `locked`: places that only the host may set, such as `block unit`, with blanks between them.
 * - `unit`: `in` or `cm`, where the preset does not say; default `in`.
 * - `currency`: three letters (ISO 4217), where prices are shown.
 * - `name`: under which the surrounding form sends the canonical query of the answer.
 * - `disabled`: nothing can be changed, and the form sends nothing.
 * - `api`: origin of the service, without a slash at its end. Default: where the script came from.
 * - `address`: keep the question in the page's address, so that links and the back button work.
 * - `remember`: keep what was typed on this device.
 * - `embedded`: overrules `address` and `remember`: neither address nor storage is touched.
 * - `ahead`: fetch what answers without a network beforehand, as with `address`; else once the service fails.
 * - `lang`: language; default the page's, else English.
 */
export abstract class HostedElement<Words> extends DrawnElement {
  static readonly formAssociated = true;
  static override properties: PropertyDeclarations = {
    preset: {},
    request: { attribute: false },
    locked: {},
    unit: {},
    currency: {},
    name: { reflect: true },
    disabled: { type: Boolean, reflect: true },
    api: {},
    address: { type: Boolean },
    remember: { type: Boolean },
    embedded: { type: Boolean },
    ahead: { type: Boolean },
    spoken: { attribute: 'lang' },
    isDisabled: { state: true },
    words: { state: true },
  };

  declare preset: string | null | undefined;
  declare request: object | undefined;
  declare locked: string | null | undefined;
  declare unit: string | null | undefined;
  declare currency: string | null | undefined;
  declare name: string | null | undefined;
  declare disabled: boolean;
  declare api: string | null | undefined;
  declare address: boolean;
  declare remember: boolean;
  declare embedded: boolean;
  declare ahead: boolean;
  declare protected spoken: string | null | undefined;
  declare protected words: Words | undefined;
  /** The host, or a form around it, has switched the element off. */
  declare protected isDisabled: boolean;

  readonly #internals = this.attachInternals();
  /** A page may change its language while it is open. */
  readonly #page = new MutationObserver(() => void this.#speak());
  /** The language last asked for: words of another that come later are not taken. */
  #wanted = '';

  /** Where its words are. */
  protected abstract readonly text: TextSource<Words>;
  /** The element from its state. */
  protected abstract view(words: Words): TemplateResult;
  /** What the form around it is told. */
  protected abstract tellForm(): Omit<FormFacts, 'anchor'>;
  /** Begins again from what the host asks, or from what the browser kept of an earlier draft. */
  protected abstract begin(draft: string): void;

  constructor() {
    super();
    for (const name of FLAGS) this[name] = false;
    this.isDisabled = false;
  }

  get form(): HTMLFormElement | null {
    return this.#internals.form;
  }

  get validity(): ValidityState {
    return this.#internals.validity;
  }

  get validationMessage(): string {
    return this.#internals.validationMessage;
  }

  checkValidity(): boolean {
    return this.#internals.checkValidity();
  }

  reportValidity(): boolean {
    return this.#internals.reportValidity();
  }

  /** The browser may tell while a view is written, when a change of state would be lost: it is taken after. */
  formDisabledCallback(isDisabled: boolean): void {
    queueMicrotask(() => {
      this.isDisabled = isDisabled;
    });
  }

  formResetCallback(): void {
    this.begin('');
  }

  formStateRestoreCallback(draft: string): void {
    this.begin(draft);
  }

  override connectedCallback(): void {
    super.connectedCallback();
    this.#page.observe(document.documentElement, { attributeFilter: ['lang'] });
    void this.#speak();
  }

  override disconnectedCallback(): void {
    super.disconnectedCallback();
    this.#page.disconnect();
  }

  override willUpdate(changed: Map<PropertyKey, unknown>): void {
    if (changed.has('spoken')) void this.#speak();
  }

  override render(): TemplateResult {
    if (this.words === undefined) return html`<slot></slot>`;
    return html`<fieldset class="whole" role="none" ?disabled=${this.isDisabled}>
      ${this.view(this.words)}
    </fieldset>`;
  }

  override updated(): void {
    const anchor = this.renderRoot.querySelector<HTMLElement>('[aria-invalid=true],input,button');
    tellForm(this.#internals, { ...this.tellForm(), anchor: anchor ?? undefined });
  }

  /** Whether only the host may set a place. */
  protected isLocked(path: string): boolean {
    return isUnder(path, this.lockedPlaces);
  }

  /** Whether the element may use the page's address, or the device, as it was asked to. */
  protected may(asked: boolean): boolean {
    return asked && !this.embedded;
  }

  protected get lockedPlaces(): readonly string[] {
    return this.locked?.split(/\s+/).filter(Boolean) ?? [];
  }

  async #speak(): Promise<void> {
    const tag = this.closest('[lang]')?.getAttribute('lang') ?? '';
    const language = chooseLanguage([tag]);
    this.#wanted = language;
    const words = await loadText(this.text, language);
    if (language === this.#wanted) this.words = words;
  }
}

const FLAGS = ['disabled', 'address', 'remember', 'embedded', 'ahead'] as const;
