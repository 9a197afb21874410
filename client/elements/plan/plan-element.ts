import type { TemplateResult } from 'lit';
import { type Draft, editDraft } from '../../data/draft.ts';
import type { ShownOption, ShownPlan } from '../../data/is-plan-answer.ts';
import type { Loaded } from '../../data/load-answer.ts';
import { loadPlan, type PlanSource } from '../../data/load-plan.ts';
import type { OnDevice } from '../../data/on-device.ts';
import { keepTicks, readTicks } from '../../data/tick-store.ts';
import { whenIdle } from '../../data/when-idle.ts';
import { LightElement } from '../../host/light-element.ts';
import { readStart } from '../../host/read-start.ts';
import type { Language } from '../../text/languages.ts';
import { planText, type Text } from '../../text/text.ts';
import type { PlanActions, PlanContext } from './plan-context.ts';
import { planErrand } from './plan-errand.ts';
import { chooseGrid, FIRST_OWN, isSameGrid, type PlanState } from './plan-state.ts';
import { planStyles } from './plan-styles.ts';
import { planView } from './plan-view.ts';

/** What the event `ragbloom-plan` carries. */
export interface PlanDetail {
  /** The answer of the API, whole: its `input` is the request as understood, its `links` say where it can be had again. */
  readonly answer: ShownPlan;
  /** `device` where the service gave no answer. */
  readonly from: 'service' | 'device';
}

/**
 * A plan for a rag quilt: a wish becomes sizes, a drawing, what to buy and cut, and the work in order.
 *
 * Attributes and properties: those of every element. `remember` keeps the ticks of the checklist on this device;
 * `address` shows a bar at the foot of a phone too.
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
 * Custom properties: `--ragbloom-ground`, `--ragbloom-sheet`, `--ragbloom-ink`, `--ragbloom-soft`, `--ragbloom-line`,
 * `--ragbloom-edge`, `--ragbloom-madder`, `--ragbloom-on-madder`, `--ragbloom-leaf`, `--ragbloom-display` (type),
 * `--ragbloom-figure` (size of the figures), `--ragbloom-gutter`.
 */
export class PlanElement extends LightElement<Draft, ShownPlan, Text, OnDevice> {
  static override styles = planStyles;
  static override properties = { ...LightElement.properties, own: { state: true } };

  /** Where every element asks; whoever registers it says where the core for the device is to be had. */
  static source: PlanSource = {
    api: '',
    patience: 4000,
    loadCore: () => Promise.reject(new Error('none')),
  };

  /** What it knows beside its question and what came of that. */
  declare private own: Omit<PlanState, keyof typeof this.status>;

  protected readonly errand = planErrand;
  protected readonly text = planText;
  protected override readonly readStart = readStart<Draft>;

  /** Another plan that was chosen. */
  #wanted: ShownOption | undefined;
  /** The language that what lies below the first screen was last fetched in. */
  #below = '';

  constructor() {
    super();
    this.own = FIRST_OWN;
  }

  protected get source(): PlanSource {
    return PlanElement.source;
  }

  override willUpdate(changed: Map<PropertyKey, unknown>): void {
    super.willUpdate(changed);
    const language = this.words?.language as Language | undefined;
    const isTime = !this.status.isBusy && (changed.has('status') || changed.has('words'));
    if (isTime && language !== undefined && language !== this.#below)
      void this.#lookBelow(language);
  }

  protected view(text: Text): TemplateResult {
    const unit = this.status.draft.unit === 'cm' ? 'cm' : 'in';
    const state: PlanState = { ...this.own, ...this.status };
    const isLocked = (path: string) => this.isLocked(path);
    const { sentences, cautions } = this;
    const context: PlanContext = {
      state,
      text,
      unit,
      said: state.answer?.input.unit ?? unit,
      isLocked,
      act: this.#actions,
      sentences,
      cautions,
    };
    return planView(context, this.may(this.address));
  }

  readonly #actions: PlanActions = {
    edit: (path, value) => this.type(path, editDraft(this.status.draft, path, value)),
    set: (path, value) => this.decide(editDraft(this.status.draft, path, value)),
    replace: (draft) => this.decide(draft),
    say: (wishText) => this.#know({ wishText, wishRead: undefined }),
    understand: () => void this.#understand(),
    measureIn: (unit) => void this.measureIn(unit),
    show: (shown) => this.#know({ shown }),
    choose: (option) => {
      this.#wanted = option;
      this.decide(editDraft(this.status.draft, 'block.cut', `${option.cut}`));
    },
    tick: (step) => this.#tick(step),
    lay: (aside) => this.#know({ aside }),
    load: (query) => loadPlan(query, this.whom, new AbortController().signal),
    retry: () => this.ask(),
    print: () => globalThis.print(),
  };

  #know(change: Partial<typeof this.own>): void {
    this.own = { ...this.own, ...change };
  }

  /** Its ticks are. */
  protected override get keepsDraft(): boolean {
    return false;
  }

  protected override get isWrong(): boolean {
    return super.isWrong || this.own.wishFault !== undefined;
  }

  /** Fetched once the first screen is settled; where it cannot be had that is said, and the next answer tries again. */
  async #lookBelow(language: Language): Promise<void> {
    this.#below = language;
    const root = this.renderRoot as ShadowRoot;
    const below = await import('./plan-view-below.ts')
      .then(({ startBelow }) => startBelow(root, language))
      .catch(() => undefined);
    if (language !== this.#below) return;
    if (below === undefined) this.#below = '';
    this.#know({ below: below ?? 'missing' });
  }

  async #understand(): Promise<void> {
    const tools = await bringWishTools().catch(() => undefined);
    if (tools === undefined) return this.set({ trouble: 'silent' });
    const [{ readWords }, { takeWish }] = tools;
    const read = readWords(this.own.wishText, this.status.draft);
    if (!read.ok) return this.#know({ wishFault: read.faults[0], wishRead: undefined });
    this.#know({ wishFault: undefined, wishRead: read.value });
    const said = await this.sayIn(read.value.unit).catch(() => undefined);
    if (said === undefined) return this.set({ trouble: 'silent' });
    this.decide(takeWish(said, read.value));
  }

  #tick(step: string): void {
    const { done } = this.own;
    const { answer } = this.status;
    const next = done.includes(step) ? done.filter((id) => id !== step) : [...done, step];
    this.#know({ done: next });
    if (this.may(this.remember) && answer !== undefined) keepTicks(answer.links.page, next);
  }

  /** Another plan that was chosen: its cut alone keeps the wish; where that leads elsewhere, its grid is needed too. */
  protected override async load(
    draft: Draft,
    source: PlanSource,
    signal: AbortSignal,
  ): Promise<Loaded<ShownPlan>> {
    const wanted = this.#wanted;
    this.#wanted = undefined;
    const loaded = await super.load(draft, source, signal);
    const isThere = loaded.kind !== 'answer' || wanted === undefined || this.isLocked('target');
    if (isThere || isSameGrid(wanted, loaded.answer)) return loaded;
    const next = chooseGrid(draft, wanted);
    this.set({ draft: next });
    return super.load(next, source, signal);
  }

  protected override welcome({ links }: ShownPlan): void {
    // As the core for the device: beforehand, where the signal may be gone when it is wanted.
    if (this.whom.isAhead) whenIdle(() => void bringWishTools().catch(() => undefined));
    if (this.may(this.remember)) this.#know({ done: readTicks(links.page) });
  }
}

/** All that it takes to understand a wish in words. */
function bringWishTools() {
  return Promise.all([
    import('../../data/read-words.ts'),
    import('../../data/take-wish.ts'),
    import('../../fields/switch-unit.ts'),
  ]);
}
