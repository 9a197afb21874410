import type { PropertyDeclarations, TemplateResult } from 'lit';
import { type CounterPlace, readPlace, writePlace } from '../../data/counter-place.ts';
import type { CounterRow } from '../../data/counter-rows.ts';
import { keepDraft } from '../../data/draft-store.ts';
import { readCurrency } from '../../data/read-currency.ts';
import { HostedElement } from '../../host/hosted-element.ts';
import { keepEarly } from '../../host/keep-early.ts';
import type { FormFacts } from '../../host/tell-form.ts';
import { counterSource } from '../../text/counter/source.ts';
import { joinSources } from '../../text/join-sources.ts';
import type { Language } from '../../text/languages.ts';
import { lightSource } from '../../text/light/source.ts';
import {
  type CounterActions,
  type CounterText,
  makeContext,
  tellFault,
} from './counter-context.ts';
import { NAME, reportCounter, sayRow } from './counter-report.ts';
import {
  type CounterState,
  FIRST_STATE,
  inHand,
  putInShop,
  readAsked,
  rowsOf,
} from './counter-state.ts';
import { counterStyles } from './counter-styles.ts';
import { counterView } from './counter-view.ts';
import { drawAddress, learnSentences, seekNearest } from './fetch-lazily.ts';
import { keepPlace, readStart } from './read-start.ts';

/** What changes the address under the page. */
const MOVES = ['popstate', 'hashchange'];
/** How long typing must rest before the answer is said, in milliseconds. */
const REST = 600;

/**
 * The cutting counter: what to ask for off the bolt that lies there, what is left of one makes, which of two bolts is
 * cheaper for the whole quilt, and what is bought. All of it is reckoned in the page; no network is waited for.
 *
 * Attributes and properties: those of every element; of these `request`, `locked` and `ahead` do nothing here.
 *
 * Events
 * - `ragbloom-counter` (bubbles, composed): something was asked for, typed or ticked; `detail` is a `CounterDetail`.
 *
 * Slots
 * - default: what shows until the element is there.
 *
 * Parts: `answer`, `amount`, `spoken`, `verdict`, `sum`, `controls`, `nearest`, `bolts`, `list`, `code`, `start`.
 *
 * Custom properties: `--ragbloom-ground`, `--ragbloom-sheet`, `--ragbloom-ink`, `--ragbloom-soft`, `--ragbloom-line`,
 * `--ragbloom-edge`, `--ragbloom-madder`, `--ragbloom-on-madder`, `--ragbloom-leaf`, `--ragbloom-display` (type).
 */
export class CounterElement extends HostedElement<CounterText> {
  static override styles = counterStyles;
  static override properties: PropertyDeclarations = {
    ...HostedElement.properties,
    state: { state: true },
  };

  /** Where the page is that opens a list that was shared; whoever registers the element says so. */
  static source: { readonly api: string } = { api: '' };

  declare private state: CounterState;

  protected readonly text = joinSources<CounterText>({
    light: lightSource,
    counter: counterSource,
  });
  /** The language that the sentences were last asked for in. */
  #learnt = '';
  /** What was set, or restored by the browser, before the element was there. */
  #first = '';
  #rest: ReturnType<typeof setTimeout> | undefined;

  constructor() {
    super();
    this.state = FIRST_STATE;
  }
  /** The query of what is to be bought; setting it asks for that. */
  get value(): string {
    return this.state.counter?.question ?? '';
  }

  set value(question: string) {
    this.begin(question);
  }

  override connectedCallback(): void {
    super.connectedCallback();
    keepEarly(this, 'value');
    for (const name of MOVES) addEventListener(name, this.#readAddress);
    addEventListener('pagehide', this.#settle);
  }

  override disconnectedCallback(): void {
    super.disconnectedCallback();
    for (const name of MOVES) removeEventListener(name, this.#readAddress);
    removeEventListener('pagehide', this.#settle);
    clearTimeout(this.#rest);
  }

  override willUpdate(changed: Map<PropertyKey, unknown>): void {
    super.willUpdate(changed);
    const isAsked = ['preset', 'address', 'remember', 'embedded'].some((key) => changed.has(key));
    if (isAsked || !this.hasUpdated) this.#beginHere();
    const isFaulty = [this.state, ...this.#rows].some(({ faults }) => faults.length > 0);
    if (this.words && isFaulty) void this.#learn(this.words.counter.language as Language);
  }

  protected override view(): TemplateResult {
    const { state } = this;
    const canShare = typeof navigator.share === 'function';
    const given = { state, text: this.#text as CounterText, canShare, act: this.#actions };
    return counterView(makeContext(given, this.currency));
  }

  protected override tellForm(): Omit<FormFacts, 'anchor'> {
    const { faults, place } = this.state;
    const [fault] = faults;
    const message = fault && this.#text ? tellFault(this.#text, fault) : '';
    return { value: this.value || undefined, draft: writePlace(place), message };
  }

  protected override begin(draft: string): void {
    if (this.hasUpdated) this.#ask(readPlace(draft || (this.preset ?? '')));
    else this.#first = draft;
  }

  get #text(): CounterText | undefined {
    return this.words && { ...this.words, sentences: this.state.sentences };
  }

  get #rows(): readonly CounterRow[] {
    return rowsOf(this.state, readCurrency(this.currency));
  }

  readonly #actions: CounterActions = {
    type: (place, text) => this.#put(`${this.#at}.${place}`, text),
    take: (at) => this.#put('at', at === 0 ? '' : `${at}`),
    tick: (at, isGot) => this.#put(`${at}.got`, isGot ? '1' : ''),
    turnTo: (mode) => this.#set({ mode, code: undefined }),
    enter: (place, text) => this.#put(place, text),
    open: (address) => this.#open(readPlace(address)),
    leave: () => this.#leave(),
    share: () => void navigator.share({ url: this.#address }).catch(() => undefined),
    showCode: () => void this.#bring(drawAddress(this.#address).then((code) => ({ code }))),
  };

  get #at(): number {
    return inHand(this.state.place, this.state.counter?.needs.length ?? 0);
  }

  get #address(): string {
    const origin = this.api ?? CounterElement.source.api;
    return new URL(`${origin}/counter${writePlace(this.state.place)}`, location.href).href;
  }

  #set(change: Partial<CounterState>): void {
    this.state = { ...this.state, ...change };
  }

  readonly #readAddress = (): void => {
    const address = location.search + location.hash;
    if (this.may(this.address) && address !== writePlace(this.state.place)) this.#beginHere();
  };

  /** What was set early or the address asks for, else what was left on the device, else what the host does. */
  #beginHere(): void {
    const here = this.may(this.address) ? location.search + location.hash : '';
    const address = this.#first || here;
    this.#first = '';
    const remember = this.may(this.remember);
    const start = readStart({ address, remember, preset: this.preset ?? '', unit: this.unit });
    this.#ask(start.place, start.lastPlan);
  }

  #ask(place: CounterPlace, lastPlan = this.state.lastPlan): void {
    clearTimeout(this.#rest);
    this.#set({ ...readAsked(place), lastPlan, nearest: undefined, code: undefined });
    if (place.question !== '') this.#changed();
  }

  /** Another question is a step that the back button undoes. */
  #open(place: CounterPlace): void {
    const isSame = place.question === this.state.place.question;
    if (place.question === '') {
      this.#set({ faults: [{ code: 'target-unclear', path: ['address'] }] });
      return;
    }
    this.#settle();
    if (this.may(this.address) && !isSame) history.pushState(null, '', writePlace(place));
    this.#set({ mode: 'bolt', code: undefined });
    this.#ask(place);
    this.#settle();
  }

  /** Nothing is lost: what was on the counter stays in the history, and on the device until something else is asked. */
  #leave(): void {
    this.#settle();
    if (this.may(this.address)) history.pushState(null, '', location.pathname);
    this.#set({ mode: 'bolt' });
    this.#ask(readPlace(''), this.state.lastPlan || this.value);
  }

  #put(path: string, value: string): void {
    this.#set({ place: putInShop(this.state.place, path, value), code: undefined });
    this.#changed();
  }

  /** Kept at once, on the device once something is asked; what is said follows when typing rests. */
  #changed(): void {
    const { place } = this.state;
    if (this.may(this.remember) && place.question !== '') keepDraft(NAME, writePlace(place));
    if (this.may(this.address)) keepPlace(writePlace(place));
    this.#set({ nearest: undefined });
    const sought = seekNearest(this.state.counter, this.#rows, this.#at);
    void this.#bring(sought.then((nearest) => ({ nearest })));
    clearTimeout(this.#rest);
    this.#rest = setTimeout(this.#settle, REST);
    const told = { detail: reportCounter(this.value, this.#rows), bubbles: true, composed: true };
    this.dispatchEvent(new CustomEvent('ragbloom-counter', told));
  }

  readonly #settle = (): void => {
    clearTimeout(this.#rest);
    if (this.may(this.address)) keepPlace(writePlace(this.state.place));
    const row = this.#rows[this.#at];
    const said = this.#text && row ? sayRow(this.#text, row) : '';
    if (said !== this.state.said) this.#set({ said });
  };

  /** Where the sentences cannot be had, one that fits all stands for them, and the next fault asks again. */
  async #learn(language: Language): Promise<void> {
    if (language === this.#learnt) return;
    this.#learnt = language;
    const sentences = await learnSentences(language);
    if (language !== this.#learnt) return;
    if (sentences === undefined) this.#learnt = '';
    if (sentences !== this.state.sentences) this.#set({ sentences });
  }

  /** What was fetched shows only while the place is the one that it was fetched for. */
  async #bring(fetched: Promise<Partial<CounterState>>): Promise<void> {
    const { place } = this.state;
    const change = await fetched;
    if (place === this.state.place) this.#set(change);
  }
}
