import { LitElement, type TemplateResult } from 'lit';
import type { PlanRequest, Unit } from '#core/contract.ts';
import { type Draft, editDraft } from '../../data/draft.ts';
import { type HistoryWay, keepAddress } from '../../data/keep-address.ts';
import { type LoadedPlan, loadPlan, type PlanSource } from '../../data/load-plan.ts';
import type { ShownOption, ShownPlan } from '../../data/plan-answer-schema.ts';
import { readHostInput, tellOnce } from '../../data/read-host-input.ts';
import { keepTicks, readTicks } from '../../data/tick-store.ts';
import { type Called, switchUnit } from '../../fields/switch-unit.ts';
import { chooseText } from '../../text/text.ts';
import { askPlan } from './ask-plan.ts';
import type { PlanActions } from './plan-context.ts';
import { FIRST_STATE, findBlank, type PlanState } from './plan-state.ts';
import { planStyles } from './plan-styles.ts';
import { planView } from './plan-view.ts';
import { readStart } from './read-start.ts';

/** What the event `ragbloom-plan` carries. */
export interface PlanDetail {
  /** The answer of the API, whole: its `input` is the request as understood, its `links` say where it can be had again. */
  readonly answer: ShownPlan;
  /** `device` where the service gave no answer. */
  readonly from: 'service' | 'device';
}

/** How long typing must rest before a plan is asked for, in milliseconds. */
const REST = 300;
const FLAGS = ['address', 'remember', 'embedded', 'ahead'] as const;

/**
 * A plan for a rag quilt: a wish becomes sizes, a drawing, what to buy and cut, and the work in order.
 *
 * Attributes and properties
 * - `plan`: what to plan first, as a flat query such as `target.width=40&target.height=50&unit=in`.
 * - `request` (property only): the same as an object of the API's contract; it wins over `plan`.
 *   What cannot be read in either is told on the page; all the rest is used.
 * - `api`: origin of the service, without a slash at its end. Default: where the script came from.
 * - `address`: keep the plan in the page's address, so that links and the back button work.
 * - `remember`: keep the ticks of the checklist on this device.
 * - `embedded`: overrules `address` and `remember`, and leaves the bar at the foot out.
 *   With none of the three it touches neither address nor storage.
 * - `ahead`: when embedded, fetch what plans without a network beforehand too; else it is fetched once the service fails.
 * - `lang`: language; default the page's, else English.
 *
 * Events
 * - `ragbloom-plan` (bubbles, composed): a plan is on the table; `detail` is a `PlanDetail`.
 *
 * Slots
 * - default: what shows until the element is there, such as a link to the plan.
 * - `shopping`: below what to buy, for a shop's own button.
 *
 * Parts: `wish`, `blocks`, `cloth`, `drawing`, `figures`, `options`, `shopping`, `facts`, `work`, `cautions`, `grounds`.
 *
 * Custom properties: `--ragbloom-sheet`, `--ragbloom-ink`, `--ragbloom-soft`, `--ragbloom-line`, `--ragbloom-edge`,
 * `--ragbloom-madder`, `--ragbloom-on-madder`, `--ragbloom-leaf`, `--ragbloom-display` (type), `--ragbloom-gutter`.
 */
export class PlanElement extends LitElement {
  static override styles = planStyles;
  static override properties = {
    plan: {},
    api: {},
    request: { attribute: false },
    address: { type: Boolean },
    remember: { type: Boolean },
    embedded: { type: Boolean },
    ahead: { type: Boolean },
    state: { state: true },
  };

  /** Where every element asks; whoever registers it says where the core for the device is to be had. */
  static source: PlanSource = {
    api: '',
    patience: 4000,
    loadCore: () => Promise.reject(new Error('none')),
  };

  declare plan: string | null | undefined;
  declare api: string | null | undefined;
  declare request: PlanRequest | undefined;
  declare address: boolean;
  declare remember: boolean;
  declare embedded: boolean;
  declare ahead: boolean;
  declare private state: PlanState;

  #called: Called = {};
  #asking = new AbortController();
  #rest: ReturnType<typeof setTimeout> | undefined;
  /** The place last typed into: one entry in the history for one field, not for each figure of it. */
  #typedAt = '';
  /** Another plan that was chosen. */
  #wanted: ShownOption | undefined;
  /** What the next plan does to the history of the page. */
  #history: HistoryWay = 'leave';

  constructor() {
    super();
    for (const flag of FLAGS) this[flag] = false;
    this.state = FIRST_STATE;
  }

  override connectedCallback(): void {
    super.connectedCallback();
    globalThis.addEventListener('popstate', this.#readAddress);
    if (this.hasUpdated && this.state.isBusy) void this.#ask();
  }

  override disconnectedCallback(): void {
    super.disconnectedCallback();
    globalThis.removeEventListener('popstate', this.#readAddress);
    clearTimeout(this.#rest);
    this.#asking.abort();
  }

  override willUpdate(changed: Map<PropertyKey, unknown>): void {
    const isAsked = ['plan', 'request', 'api'].some((name) => changed.has(name));
    if (isAsked || !this.hasUpdated) this.#begin();
  }

  override render(): TemplateResult {
    const { state } = this;
    const text = chooseText([this.closest('[lang]')?.getAttribute('lang') ?? '']);
    const unit = state.draft.unit === 'cm' ? 'cm' : 'in';
    return planView({ state, text, unit, act: this.#actions }, this.#may(this.address));
  }

  #may(asked: boolean): boolean {
    return asked && !this.embedded;
  }

  get #source(): PlanSource {
    const { source } = PlanElement;
    return { ...source, api: this.api ?? source.api, isAhead: this.ahead || !this.embedded };
  }

  #begin(): void {
    const address = this.#may(this.address) ? location.search : '';
    const { draft, faults } = readStart({ address, request: this.request, plan: this.plan });
    this.#history = 'leave';
    this.#typedAt = '';
    this.#set({ draft, faults: [], hostFaults: faults });
    void this.#ask(3);
  }

  readonly #readAddress = (): void => {
    if (this.#may(this.address)) this.#begin();
  };

  readonly #actions: PlanActions = {
    edit: (path, value) => this.#type(path, editDraft(this.state.draft, path, value)),
    set: (path, value) => this.#decide(editDraft(this.state.draft, path, value)),
    replace: (draft) => this.#decide(draft),
    say: (wishText) => this.#set({ wishText, wishRead: undefined }),
    understand: () => void this.#understand(),
    measureIn: (unit) => this.#decide(this.#sayIn(unit)),
    show: (shown) => this.#set({ shown }),
    choose: (option) => {
      this.#wanted = option;
      this.#decide(editDraft(this.state.draft, 'block.cut', `${option.cut}`));
    },
    tick: (step) => this.#tick(step),
    lay: (aside) => this.#set({ aside }),
    load: (query) => loadPlan(query, this.#source, new AbortController().signal),
    retry: () => void this.#ask(),
    print: () => globalThis.print(),
  };

  #set(change: Partial<PlanState>): void {
    this.state = { ...this.state, ...change };
  }

  /** A change that was typed: asked for when typing rests. */
  #type(path: string, draft: Draft): void {
    if (path !== this.#typedAt) this.#history = 'push';
    this.#typedAt = path;
    this.#set({ draft, isBusy: true });
    this.#asking.abort();
    clearTimeout(this.#rest);
    this.#rest = setTimeout(() => void this.#ask(), REST);
  }

  /** A change that was chosen: asked for at once. */
  #decide(draft: Draft): void {
    this.#typedAt = '';
    this.#history = 'push';
    this.#set({ draft });
    void this.#ask();
  }

  /** The draft in another unit; its lengths are known as numbers while the plan on the table is of this draft. */
  #sayIn(unit: Unit): Draft {
    const { draft, answer, faults, isBusy } = this.state;
    const input = isBusy || faults.length > 0 ? undefined : answer?.input;
    const next = switchUnit(draft, unit, { called: this.#called, input });
    this.#called = next.called;
    return next.draft;
  }

  async #understand(): Promise<void> {
    const core = await this.#source.loadCore().catch(() => undefined);
    if (core === undefined) return this.#set({ isUnreachable: true });
    const { wishText, draft } = this.state;
    const read = core.readWish(wishText, draft.unit === 'cm' ? 'cm' : 'in');
    if (!read.ok) return this.#set({ wishFault: read.faults[0], wishRead: undefined });
    const { unit, ...wish } = read.value;
    this.#set({ wishFault: undefined, wishRead: read.value });
    const kept = editDraft(editDraft(this.#sayIn(unit), 'target'), 'infant');
    this.#decide({ ...kept, ...readHostInput(wish).draft });
  }

  #tick(step: string): void {
    const { done, answer } = this.state;
    const next = done.includes(step) ? done.filter((id) => id !== step) : [...done, step];
    this.#set({ done: next });
    if (this.#may(this.remember) && answer !== undefined) keepTicks(answer.links.page, next);
  }

  /** Asks for the plan of the draft; what was asked before is answered no more. */
  async #ask(tries = 0): Promise<void> {
    clearTimeout(this.#rest);
    this.#asking.abort();
    this.#asking = new AbortController();
    const { draft } = this.state;
    const wanted = this.#wanted;
    this.#wanted = undefined;
    const blank = findBlank(draft);
    if (blank.length > 0) return this.#set({ faults: blank, isBusy: false });
    this.#set({ isBusy: true });
    const asked = { draft, wanted, tries };
    const answered = await askPlan(asked, this.#source, this.#asking.signal).catch(() => undefined);
    if (answered === undefined) return;
    const hostFaults = tellOnce([...this.state.hostFaults, ...answered.leftOut]);
    this.#set({ draft: answered.draft, hostFaults });
    this.#take(answered.loaded);
  }

  #take(loaded: LoadedPlan): void {
    const isUnreachable = loaded.kind === 'unreachable';
    const faults = loaded.kind === 'faults' ? loaded.faults : [];
    this.#set({ isBusy: false, isUnreachable, faults });
    if (loaded.kind !== 'answer') return;
    const { answer, from } = loaded;
    const { page } = answer.links;
    this.#set({ answer, from, ...(this.#may(this.remember) && { done: readTicks(page) }) });
    if (this.#may(this.address)) keepAddress(page.slice(page.indexOf('?')), this.#history);
    this.#history = this.#typedAt === '' ? 'leave' : 'replace';
    const detail: PlanDetail = { answer, from };
    this.dispatchEvent(new CustomEvent('ragbloom-plan', { detail, bubbles: true, composed: true }));
  }
}
