import type { PropertyDeclarations } from 'lit';
import type { Fault } from '#core/outcome.ts';
import { type Asker, makeAsker } from '../data/asker.ts';
import { type AnyDraft, dropFaulty, writeQuery } from '../data/draft.ts';
import { keepDraft, readDraft } from '../data/draft-store.ts';
import { type HistoryWay, keepAddress } from '../data/keep-address.ts';
import type { Loaded, Source } from '../data/load-answer.ts';
import { tellOnce } from '../data/read-host-input.ts';
import type { AskStatus, Errand, ShownAnswer } from './errand.ts';
import { holdLocked } from './hold-locked.ts';
import { HostedElement } from './hosted-element.ts';
import { keepEarly } from './keep-early.ts';
import { readHost } from './read-host.ts';
import { readSearch } from './read-search.ts';
import type { ReadStart, Start, Started } from './read-start.ts';
import type { FormFacts } from './tell-form.ts';

/** How long typing must rest before the service is asked, in milliseconds. */
const REST = 300;
/** An address longer than this is left as it is: not every program takes one. */
const LONGEST_ADDRESS = 4000;
/** How often what cannot be had of a preset is left out and the rest asked for. */
const TRIES = 3;
/** What the host asks with: a change begins anew. */
const ASKED = ['preset', 'request', 'api', 'unit', 'locked'];

/**
 * An element that asks the service: where the question comes from, when it is asked, what becomes of the answer.
 * Its event is named like its tag and carries `{ answer, from }`.
 */
export abstract class AskingElement<
  Kind extends AnyDraft,
  Answer extends ShownAnswer,
  Words,
  Core = unknown,
> extends HostedElement<Words> {
  static override properties: PropertyDeclarations = {
    ...HostedElement.properties,
    status: { state: true },
  };

  declare protected status: AskStatus<Kind, Answer>;

  /** Where the question comes from that is begun with. */
  #start: Start | undefined;
  /** The place last typed into: one entry in the history for one field, not for each figure of it. */
  #typedAt = '';
  #history: HistoryWay = 'leave';
  /** What the host set, which locked places keep. */
  #host = {} as Kind;
  /** What was set, or restored by the browser, before the element was there. */
  #first = '';
  /** How often the rest may yet be asked for without what is at fault. */
  #tries = 0;
  readonly #asker: Asker = makeAsker<Answer>({
    ask: (signal) => this.load(this.status.draft, this.whom, signal),
    take: (loaded) => this.#take(loaded),
    rest: REST,
  });

  /** What it asks for. */
  protected abstract readonly errand: Errand<Kind, Answer, Core>;
  /** Where the service and the core for the device are; whoever registers the element says so. */
  protected abstract readonly source: Source<Core>;
  /** The sentence for a fault. */
  protected abstract tell(words: Words, fault: Fault): string;

  constructor() {
    super();
    this.status = { draft: {} as Kind, faults: [], hostFaults: [], from: 'service', isBusy: true };
  }

  /** The canonical query of the answer; empty while there is none to what was typed. Setting it asks that. */
  get value(): string {
    const { answer, isBusy, faults, trouble } = this.status;
    const isOpen = isBusy || faults.length > 0 || trouble !== undefined;
    return isOpen || answer === undefined ? '' : readSearch(answer.links.self).slice(1);
  }

  set value(query: string) {
    this.begin(query);
  }

  override connectedCallback(): void {
    super.connectedCallback();
    keepEarly(this, 'value');
    globalThis.addEventListener('popstate', this.#readAddress);
    if (this.hasUpdated && this.status.isBusy) this.ask();
  }

  override disconnectedCallback(): void {
    super.disconnectedCallback();
    globalThis.removeEventListener('popstate', this.#readAddress);
    this.#asker.stop();
  }

  override willUpdate(changed: Map<PropertyKey, unknown>): void {
    super.willUpdate(changed);
    if (!this.hasUpdated || ASKED.some((key) => changed.has(key))) this.#beginHere();
  }

  protected override tellForm(): Omit<FormFacts, 'anchor'> {
    const { faults, draft } = this.status;
    const [fault] = faults;
    const message = fault && this.words ? this.tell(this.words, fault) : '';
    return { value: this.value || undefined, draft: writeQuery(draft), message };
  }

  protected override begin(draft: string): void {
    if (this.hasUpdated) this.#begin({ address: '', kept: draft });
    else this.#first = draft;
  }

  protected set(change: Partial<AskStatus<Kind, Answer>>): void {
    this.status = { ...this.status, ...change };
  }

  /** A change that was typed at one place: asked for when typing rests. */
  protected type(path: string, draft: Kind): void {
    if (path !== this.#typedAt) this.#history = 'push';
    this.#typedAt = path;
    this.#change(draft);
    this.#asker.later();
  }

  /** A change that was chosen: asked for at once. */
  protected decide(draft: Kind): void {
    this.#typedAt = '';
    this.#history = 'push';
    this.#change(draft);
    this.ask();
  }

  /** What the host set, said in another unit. */
  protected restate(draft: Kind): void {
    this.#host = { ...this.#host, ...holdLocked({} as Kind, draft, this.lockedPlaces) };
  }

  /** Asks at once, or says what has to be filled in first. */
  protected ask(): void {
    this.#asker.stop();
    const faults = this.errand.findBlank(this.status.draft);
    this.set(faults.length > 0 ? { faults, isBusy: false } : { isBusy: true });
    if (faults.length === 0) this.#asker.now();
  }

  /** What address and device say is read by what is fetched then; an element that mostly has them brings it along. */
  protected readonly readStart: ReadStart<Kind> = async (start, keys) =>
    (await import('./read-start.ts')).readStart<Kind>(start, keys);

  /** What else an element does with a draft that it begins with. */
  protected laid(_draft: Kind): void {}

  /** What else an element does with an answer before its host is told. */
  protected welcome(_answer: Answer): void {}

  /** One question to the service; an element that must ask twice does so here. */
  protected load(draft: Kind, source: Source<Core>, signal: AbortSignal): Promise<Loaded<Answer>> {
    return this.errand.load(writeQuery(draft), source, signal);
  }

  /** Whether what was typed is kept on the device; an element that keeps something else says no. */
  protected get keepsDraft(): boolean {
    return this.may(this.remember);
  }

  /** Whom it asks. */
  protected get whom(): Source<Core> {
    const { source, ahead } = this;
    return { ...source, api: this.api ?? source.api, isAhead: ahead || this.may(this.address) };
  }

  readonly #readAddress = (): void => {
    if (this.may(this.address)) this.#beginHere();
  };

  #beginHere(): void {
    const first = this.#first;
    this.#first = '';
    const address = this.may(this.address) && first === '' ? location.search : '';
    const kept = first || (this.keepsDraft ? readDraft(this.errand.name) : '');
    this.#begin({ address, kept });
  }

  #begin(own: Pick<Start, 'address' | 'kept'>): void {
    const { errand, unit, lockedPlaces: locked } = this;
    const start = { ...own, preset: this.request ?? this.preset, unit, locked };
    const { draft, faults } = readHost<Kind>(start, errand.keys);
    const given = { draft, host: draft, faults };
    const lay = (started: Started<Kind>) => this.#start === start && this.#layStart(started);
    this.#start = start;
    this.#asker.stop();
    this.set(this.hasUpdated ? { isBusy: true } : { draft: errand.complete(draft) });
    const started = own.address + own.kept === '' ? given : this.readStart(start, errand.keys);
    if (started instanceof Promise) void started.then(lay, () => lay(given));
    else lay(started);
  }

  #layStart({ draft, host, faults: hostFaults }: Started<Kind>): void {
    this.#host = this.errand.complete(host);
    this.#history = 'leave';
    this.#typedAt = '';
    this.#tries = TRIES;
    this.set({ faults: [], hostFaults });
    this.#lay(this.errand.complete(draft));
  }

  #change(changed: Kind): void {
    this.#tries = 0;
    const draft = holdLocked(changed, this.#host, this.lockedPlaces);
    this.set({ draft, isBusy: true });
    if (this.keepsDraft) keepDraft(this.errand.name, writeQuery(draft));
  }

  #take(loaded: Loaded<Answer>): void {
    const trouble = loaded.kind === 'unreachable' ? loaded.trouble : undefined;
    const faults = loaded.kind === 'faults' ? loaded.faults : [];
    const lost = faults.filter((fault) => !this.errand.isMendable?.(fault));
    if (lost.length > 0 && this.#tries > 0) this.#leaveOut(lost);
    else this.set({ isBusy: false, trouble, faults });
    if (loaded.kind === 'answer') this.#show(loaded);
  }

  #show({ answer, from }: Extract<Loaded<Answer>, { kind: 'answer' }>): void {
    this.set({ answer, from });
    this.welcome(answer);
    const search = readSearch(answer.links.self);
    const way = search.length > LONGEST_ADDRESS ? 'leave' : this.#history;
    if (this.may(this.address)) keepAddress(search, way);
    this.#history = this.#typedAt === '' ? 'leave' : 'replace';
    const how = { detail: { answer, from }, bubbles: true, composed: true };
    this.dispatchEvent(new CustomEvent(this.errand.name, how));
  }

  /** What a host or an address asked for and cannot be had is told, and the rest asked for; at last nothing of it. */
  #leaveOut(faults: readonly Fault[]): void {
    this.#tries -= 1;
    const rest = this.#tries === 0 ? ({} as Kind) : dropFaulty(this.status.draft, faults);
    this.set({ hostFaults: tellOnce([...this.status.hostFaults, ...faults]) });
    this.#lay(this.errand.complete(rest));
  }

  #lay(draft: Kind): void {
    this.set({ draft });
    this.laid(draft);
    this.ask();
  }
}
