import type { PropertyDeclarations, TemplateResult } from 'lit';
import type { Unit } from '#core/contract.ts';
import type { Fault } from '#core/outcome.ts';
import { type Asker, makeAsker } from '../../data/asker.ts';
import { readCompared, writeCompared } from '../../data/compared-plans.ts';
import type { ShownPlan } from '../../data/is-plan-answer.ts';
import { keepAddress } from '../../data/keep-address.ts';
import { loadPlan, type PlanSource } from '../../data/load-plan.ts';
import { sayFault } from '../../fields/say-fault.ts';
import { HostedElement } from '../../host/hosted-element.ts';
import { keepEarly } from '../../host/keep-early.ts';
import type { FormFacts } from '../../host/tell-form.ts';
import { compareSource } from '../../text/compare/source.ts';
import { faultsSource } from '../../text/faults/source.ts';
import { joinSources } from '../../text/join-sources.ts';
import { lightSource } from '../../text/light/source.ts';
import type { CompareActions, CompareText } from './compare-context.ts';
import {
  answerSide,
  BLANK,
  type CompareState,
  chooseUnit,
  isSettled,
  otherThan,
  type SideName,
  typeSide,
} from './compare-state.ts';
import { compareStyles } from './compare-styles.ts';
import { compareView } from './compare-view.ts';
import { doublePlan } from './double-plan.ts';
import { tellIn } from './say-measure.ts';

/** What the event `ragbloom-compare` carries: the answers of the API to both plans, each once it is there. */
export interface CompareDetail {
  readonly a: ShownPlan | undefined;
  readonly b: ShownPlan | undefined;
}

/** How long typing must rest before the service is asked, in milliseconds. */
const REST = 300;
const SIDES: readonly SideName[] = ['a', 'b'];

/**
 * Two plans side by side: size, blocks, cloth, cost, thread, hours and weight, how the one differs from the other, and
 * both drawn at one scale. Either may be doubled.
 *
 * Attributes and properties, beside those of every element; `preset` and the address hold `a` and `b`, each the query of
 * a plan, and `locked` may name either; `request`, `remember` and `ahead` do nothing here
 * - none of its own.
 *
 * Events
 * - `ragbloom-compare` (bubbles, composed): a plan is on the table; `detail` is a `CompareDetail`.
 *
 * Slots
 * - default: what shows until the element is there.
 *
 * Parts: `ask`, `link`, `notices`, `drawing`, `figures`.
 *
 * Custom properties: `--ragbloom-sheet`, `--ragbloom-ink`, `--ragbloom-soft`, `--ragbloom-line`, `--ragbloom-edge`,
 * `--ragbloom-madder`, `--ragbloom-on-madder`, `--ragbloom-leaf`, `--ragbloom-display` (type).
 */
export class CompareElement extends HostedElement<CompareText> {
  static override styles = compareStyles;
  static override properties: PropertyDeclarations = {
    ...HostedElement.properties,
    state: { state: true },
    shownUnit: { state: true },
  };

  /** Where every element asks; whoever registers it says where the core for the device is to be had. */
  static source: PlanSource = {
    api: '',
    patience: 4000,
    loadCore: () => Promise.reject(new Error('none')),
  };

  declare private state: CompareState;
  /** What figures are told in once somebody chose. */
  declare private shownUnit: Unit | undefined;

  protected readonly text = joinSources<CompareText>({
    light: lightSource,
    faults: faultsSource,
    compare: compareSource,
  });
  /** What was set before the element was drawn. */
  #first = '';
  readonly #askers: Readonly<Record<SideName, Asker>> = {
    a: this.#makeAsker('a'),
    b: this.#makeAsker('b'),
  };

  constructor() {
    super();
    this.state = { a: BLANK, b: BLANK };
  }

  /** The query of the comparison, `a` and `b`; setting it compares those plans. */
  get value(): string {
    return writeCompared({ a: this.state.a.query, b: this.state.b.query });
  }

  set value(query: string) {
    this.begin(query);
  }

  override connectedCallback(): void {
    super.connectedCallback();
    keepEarly(this, 'value');
    globalThis.addEventListener('popstate', this.#readAddress);
    for (const side of SIDES) if (this.state[side].isBusy) this.#askers[side].now();
  }

  override disconnectedCallback(): void {
    super.disconnectedCallback();
    globalThis.removeEventListener('popstate', this.#readAddress);
    for (const side of SIDES) this.#askers[side].stop();
  }

  override willUpdate(changed: Map<PropertyKey, unknown>): void {
    super.willUpdate(changed);
    const isAsked = ['preset', 'api', 'unit', 'locked'].some((key) => changed.has(key));
    if (isAsked || !this.hasUpdated) this.#beginHere();
  }

  protected override tellForm(): Omit<FormFacts, 'anchor'> {
    const [fault] = SIDES.flatMap((side) => this.state[side].faults);
    const message = fault && this.words ? tell(this.words, fault) : '';
    const isWhole = SIDES.every((side) => isSettled(this.state[side]));
    return { value: isWhole ? this.value : undefined, draft: this.value, message };
  }

  protected override begin(draft: string): void {
    if (!this.hasUpdated) this.#first = draft;
    else this.#begin(draft);
  }

  #begin(draft: string): void {
    const host = readCompared(this.preset ?? '');
    const own = readCompared(draft);
    for (const side of SIDES) {
      const isHost = this.isLocked(side) || own[side] === '';
      this.#set(side, typeSide(BLANK, isHost ? host[side] : own[side]));
    }
    this.#askAgain();
  }

  /** Asks for what is waited for, and for nothing else. */
  #askAgain(): void {
    for (const side of SIDES) {
      this.#askers[side].stop();
      if (this.state[side].isBusy) this.#askers[side].now();
    }
  }

  protected override view(words: CompareText): TemplateResult {
    const { language } = words.light;
    return compareView({
      state: this.state,
      words,
      telling: tellIn(language, chooseUnit(this.state, this.shownUnit ?? this.unit), this.currency),
      api: this.api ?? CompareElement.source.api,
      tell: (fault) => tell(words, fault),
      isLocked: (path) => this.isLocked(path),
      canDouble: (side) => isSettled(this.state[side]) && !this.isLocked(otherThan(side)),
      act: this.#actions,
    });
  }

  readonly #actions: CompareActions = {
    type: (side, typed) => this.#type(side, typed),
    double: (side, doubling) => {
      const { query, answer } = this.state[side];
      if (answer !== undefined) this.#decide(otherThan(side), doublePlan(query, answer, doubling));
    },
    swap: () => {
      const { a, b } = this.state;
      this.state = { a: b, b: a };
      this.#askAgain();
      this.#keep('push');
    },
    measureIn: (unit) => {
      this.shownUnit = unit;
    },
    retry: () => {
      for (const side of SIDES)
        if (this.state[side].trouble !== undefined) this.#askers[side].now();
    },
  };

  #makeAsker(side: SideName): Asker {
    return makeAsker<ShownPlan>({
      ask: (signal) => {
        const { source } = CompareElement;
        const whom = { ...source, api: this.api ?? source.api, isAhead: this.may(this.address) };
        return loadPlan(this.state[side].query, whom, signal);
      },
      take: (loaded) => {
        this.#set(side, answerSide(this.state[side], loaded));
        if (loaded.kind === 'answer') this.#report();
      },
      rest: REST,
    });
  }

  #set(side: SideName, to: CompareState[SideName]): void {
    this.state = { ...this.state, [side]: to };
  }

  #type(side: SideName, typed: string): void {
    this.#set(side, typeSide(this.state[side], typed));
    if (this.state[side].isBusy) this.#askers[side].later();
    else this.#askers[side].stop();
    this.#keep('replace');
  }

  #decide(side: SideName, query: string): void {
    this.#set(side, typeSide(this.state[side], query));
    if (this.state[side].isBusy) this.#askers[side].now();
    this.#keep('push');
  }

  #keep(way: 'push' | 'replace'): void {
    if (this.may(this.address)) keepAddress(`?${this.value}`, way);
  }

  #report(): void {
    const detail: CompareDetail = { a: this.state.a.answer, b: this.state.b.answer };
    this.dispatchEvent(
      new CustomEvent('ragbloom-compare', { detail, bubbles: true, composed: true }),
    );
  }

  readonly #readAddress = (): void => {
    const there = writeCompared(readCompared(location.search));
    if (this.may(this.address) && there !== this.value) this.#beginHere();
  };

  #beginHere(): void {
    const first = this.#first;
    this.#first = '';
    this.#begin(first || (this.may(this.address) ? location.search : ''));
  }
}

function tell({ faults, light, compare }: CompareText, fault: Fault): string {
  const isNoPlan = fault.code === 'target-unclear' && fault.path.length === 0;
  return isNoPlan ? compare.noPlan : sayFault(faults, fault, () => light.wrong);
}
