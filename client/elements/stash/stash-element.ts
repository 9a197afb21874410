import type { TemplateResult } from 'lit';
import { type Asker, makeAsker } from '../../data/asker.ts';
import { editDraft, writeQuery } from '../../data/draft.ts';
import { keepDraft, readDraft } from '../../data/draft-store.ts';
import { type HistoryWay, keepAddress } from '../../data/keep-address.ts';
import { type LoadedStash, loadStash, type StashSource } from '../../data/load-stash.ts';
import { dropRow, placeFault, typeInRow } from '../../data/rows.ts';
import type { ShownStash } from '../../data/stash-answer-schema.ts';
import { makeTableActions, NO_SOURCE, type TableSource } from '../../data/table-actions.ts';
import { type Called, switchUnit } from '../../fields/switch-unit.ts';
import { DrawnElement } from '../../host/drawn-element.ts';
import { chooseStashText } from '../../text/stash-text.ts';
import { readStart } from './read-start.ts';
import type { StashActions } from './stash-context.ts';
import {
  COLUMNS,
  type Done,
  FIRST_STATE,
  LIST,
  listNames,
  MOST_ROWS,
  namesPrints,
  type StashDraft,
  type StashState,
  unitOf,
  writeAsked,
} from './stash-state.ts';
import { stashStyles } from './stash-styles.ts';
import { stashView } from './stash-view.ts';

/** What the event `ragbloom-stash` carries. */
export interface StashDetail {
  /** The answer of the API, whole. */
  readonly answer: ShownStash;
  /** `device` where the service gave no answer. */
  readonly from: 'service' | 'device';
}

/** How long typing must rest before the service is asked, in milliseconds. */
const REST = 300;
/** Under this name what was typed is kept on the device. */
const DRAFT = 'stash';
/** An address longer than this is left as it is: not every program takes one. */
const LONGEST_ADDRESS = 4000;

/**
 * What the cloth at hand makes: pieces typed, pasted or read from a file become the quilts that can be cut from them,
 * drawn to scale, with what to cut from which piece and what is left.
 *
 * Attributes and properties
 * - `stash`: what to begin with, as a flat query of `/v1/stash`.
 * - `api`: origin of the service, without a slash at its end. Default: where the script came from.
 * - `address`: keep a stash that is small enough in the page's address, so that links and the back button work.
 * - `remember`: keep what was typed on this device.
 *   Without these two the element touches neither address nor storage.
 * - `lang`: language; default the page's, else English.
 *
 * Events
 * - `ragbloom-stash` (bubbles, composed): an answer is on the table; `detail` is a `StashDetail`.
 *
 * Slots
 * - default: what shows until the element is there.
 *
 * Parts: `pieces`, `wish`, `drawing`, `figures`, `options`, `cutting`, `cautions`, `grounds`.
 *
 * Custom properties: `--ragbloom-sheet`, `--ragbloom-ink`, `--ragbloom-soft`, `--ragbloom-line`, `--ragbloom-edge`,
 * `--ragbloom-madder`, `--ragbloom-on-madder`, `--ragbloom-leaf`, `--ragbloom-display` (type), `--ragbloom-gutter`.
 */
export class StashElement extends DrawnElement {
  static override styles = stashStyles;
  static override properties = {
    stash: {},
    api: {},
    address: { type: Boolean },
    remember: { type: Boolean },
    state: { state: true },
  };

  /** Where every element asks; whoever registers it says where the rest is to be had. */
  static source: TableSource<StashSource> = NO_SOURCE;

  declare stash: string | null | undefined;
  declare api: string | null | undefined;
  declare address: boolean;
  declare remember: boolean;
  declare private state: StashState;

  #called: Called = {};
  /** The place last typed into: one entry in the history for one field, not for each figure of it. */
  #typedAt = '';
  #history: HistoryWay = 'leave';
  /** Where the rows that were asked of last stand in the table. */
  #places: readonly number[] = [];
  readonly #asker: Asker = makeAsker<ShownStash>({
    ask: (signal) => {
      const { source } = StashElement;
      const { query, places } = writeAsked(this.state.draft);
      this.#places = places;
      return loadStash(query, { ...source, api: this.api ?? source.api }, signal);
    },
    take: (loaded) => this.#take(loaded),
    rest: REST,
  });

  constructor() {
    super();
    this.address = false;
    this.remember = false;
    this.state = FIRST_STATE;
  }

  override connectedCallback(): void {
    super.connectedCallback();
    globalThis.addEventListener('popstate', this.#readAddress);
  }

  override disconnectedCallback(): void {
    super.disconnectedCallback();
    globalThis.removeEventListener('popstate', this.#readAddress);
    this.#asker.stop();
  }

  override willUpdate(changed: Map<PropertyKey, unknown>): void {
    if (changed.has('stash') || changed.has('api') || !this.hasUpdated) this.#begin();
  }

  override render(): TemplateResult {
    const { state } = this;
    const language = this.closest('[lang]')?.getAttribute('lang') ?? '';
    const unit = unitOf(state.draft);
    return stashView(
      { ...chooseStashText([language]), state, unit, act: this.#actions },
      this.address,
    );
  }

  #begin(): void {
    const address = this.address ? location.search : '';
    const kept = this.remember ? readDraft(DRAFT) : '';
    this.#history = 'leave';
    this.#typedAt = '';
    this.#set({ ...readStart({ address, kept, stash: this.stash ?? '' }), faults: [] });
    this.#askNow();
  }

  readonly #readAddress = (): void => {
    if (this.address) this.#begin();
  };

  readonly #actions: StashActions = {
    ...makeTableActions<StashDraft>({
      list: LIST,
      columns: COLUMNS,
      most: MOST_ROWS,
      file: 'stash.csv',
      loadCsv: () => StashElement.source.loadCsv(),
      read: () => this.state.draft,
      names: () => listNames(this.state.hasPrints),
      replace: (kind, draft, rows) => this.#replaceRows({ kind, rows }, draft),
      refuse: (fileFault) => this.#set({ fileFault }),
      sayIn: (draft, unit) => switchUnit(draft, unit, { called: {}, input: undefined }).draft,
    }),
    edit: (path, typed) => this.#type(path, editDraft(this.state.draft, path, typed)),
    replace: (draft) => this.#decide({ draft }),
    typeCell: ({ row, name }, typed) => {
      const draft = typeInRow(this.state.draft, { list: LIST, row, name }, typed);
      this.#type(`${row}.${name}`, draft);
    },
    dropRow: (row) => this.#decide({ draft: dropRow(this.state.draft, LIST, row) }),
    undo: () => this.#decide({ draft: this.state.done?.before ?? this.state.draft }),
    showPrints: (hasPrints) => this.#set({ hasPrints }),
    measureIn: (unit) => {
      const { draft, answer, faults } = this.state;
      const input = faults.length > 0 ? undefined : answer?.input;
      const next = switchUnit(draft, unit, { called: this.#called, input });
      this.#called = next.called;
      this.#decide({ draft: next.draft });
    },
    choose: (chosen) => this.#set({ chosen }),
    retry: () => this.#askNow(),
    print: () => globalThis.print(),
  };

  #replaceRows(done: Pick<Done, 'kind' | 'rows'>, draft: StashDraft): void {
    const before = this.state.draft;
    this.#decide({ draft, hasPrints: this.state.hasPrints || namesPrints(draft) });
    this.#set({ done: { ...done, before } });
  }

  #set(change: Partial<StashState>): void {
    this.state = { ...this.state, ...change };
  }

  /** A change that was typed: asked for when typing rests. */
  #type(path: string, draft: StashDraft): void {
    if (path !== this.#typedAt) this.#history = 'push';
    this.#typedAt = path;
    this.#change({ draft, isBusy: true });
    this.#asker.later();
  }

  /** A change that was chosen: asked for at once. */
  #decide(change: Partial<StashState>): void {
    this.#typedAt = '';
    this.#history = 'push';
    this.#change(change);
    this.#askNow();
  }

  #change(change: Partial<StashState>): void {
    this.#set({ done: undefined, fileFault: undefined, ...change });
    this.#keep();
  }

  #keep(): void {
    const beside = this.address ? location.search : '';
    if (this.remember) keepDraft(DRAFT, `${beside}#${writeQuery(this.state.draft)}`);
  }

  #askNow(): void {
    const { isEmpty } = writeAsked(this.state.draft);
    if (isEmpty) this.#asker.stop();
    else this.#asker.now();
    this.#set(isEmpty ? { isBusy: false, answer: undefined, faults: [] } : { isBusy: true });
  }

  #take(loaded: LoadedStash): void {
    const isUnreachable = loaded.kind === 'unreachable';
    const found = loaded.kind === 'faults' ? loaded.faults : [];
    const faults = found.map((fault) => placeFault(fault, LIST, this.#places));
    this.#set({ isBusy: false, isUnreachable, faults });
    if (loaded.kind !== 'answer') return;
    const { answer, from } = loaded;
    this.#set({ answer, from });
    const query = answer.links.page.slice(answer.links.page.indexOf('?'));
    if (this.address && query.length <= LONGEST_ADDRESS) keepAddress(query, this.#history);
    if (this.#history !== 'leave') this.#keep();
    this.#history = this.#typedAt === '' ? 'leave' : 'replace';
    const detail: StashDetail = { answer, from };
    this.dispatchEvent(
      new CustomEvent('ragbloom-stash', { detail, bubbles: true, composed: true }),
    );
  }
}
