import type { TemplateResult } from 'lit';
import { type Asker, makeAsker } from '../../data/asker.ts';
import { editDraft, writeQuery } from '../../data/draft.ts';
import { keepDraft, readDraft } from '../../data/draft-store.ts';
import { type HistoryWay, keepAddress } from '../../data/keep-address.ts';
import type { ShownKits } from '../../data/kits-answer-schema.ts';
import { type KitsSource, type LoadedKits, loadKits } from '../../data/load-kits.ts';
import { dropRow, placeFault, typeInRow } from '../../data/rows.ts';
import { makeTableActions, NO_SOURCE, type TableSource } from '../../data/table-actions.ts';
import type { Called } from '../../fields/switch-unit.ts';
import { DrawnElement } from '../../host/drawn-element.ts';
import { chooseKitsText } from '../../text/kits-text.ts';
import type { KitsActions } from './kits-context.ts';
import {
  COLUMNS,
  currencyOf,
  type Done,
  DRAFT,
  FIRST_STATE,
  type KitsDraft,
  type KitsState,
  LIST,
  LONGEST_ADDRESS,
  listNames,
  MOST_ROWS,
  namesPrints,
  REST,
  unitOf,
  writeAsked,
} from './kits-state.ts';
import { kitsStyles } from './kits-styles.ts';
import { kitsView } from './kits-view.ts';
import { readStart } from './read-start.ts';
import { switchKits } from './switch-kits.ts';

/** What the event `ragbloom-kits` carries. */
export interface KitsDetail {
  /** The answer of the API, whole. */
  readonly answer: ShownKits;
  /** `device` where the service gave no answer. */
  readonly from: 'service' | 'device';
}

/**
 * Bolts become kits on a shelf: how many can be cut, what is in each, how each bolt is cut, what is left or to be bought
 * more, what a kit costs and sells at, what it weighs and what its label can say.
 *
 * Attributes and properties
 * - `kits`: what to begin with, as a flat query of `/v1/kits`.
 * - `api`: origin of the service, without a slash at its end. Default: where the script came from.
 * - `address`: keep bolts that are few enough in the page's address, so that links and the back button work.
 * - `remember`: keep what was typed on this device.
 *   Without these two the element touches neither address nor storage.
 * - `lang`: language; default the page's, else English.
 *
 * Events
 * - `ragbloom-kits` (bubbles, composed): an answer is on the table; `detail` is a `KitsDetail`.
 *
 * Slots
 * - default: what shows until the element is there.
 *
 * Parts: `bolts`, `kit`, `money`, `drawing`, `figures`, `cutting`, `shelf`, `cautions`, `grounds`.
 *
 * Custom properties: `--ragbloom-sheet`, `--ragbloom-ink`, `--ragbloom-soft`, `--ragbloom-line`, `--ragbloom-edge`,
 * `--ragbloom-madder`, `--ragbloom-on-madder`, `--ragbloom-leaf`, `--ragbloom-display` (type), `--ragbloom-gutter`.
 */
export class KitsElement extends DrawnElement {
  static override styles = kitsStyles;
  static override properties = {
    kits: {},
    api: {},
    address: { type: Boolean },
    remember: { type: Boolean },
    state: { state: true },
  };

  /** Where every element asks; whoever registers it says where the rest is to be had. */
  static source: TableSource<KitsSource> = NO_SOURCE;

  declare kits: string | null | undefined;
  declare api: string | null | undefined;
  declare address: boolean;
  declare remember: boolean;
  declare private state: KitsState;

  #called: Called = {};
  /** The place last typed into: one entry in the history for one field, not for each figure of it. */
  #typedAt = '';
  #history: HistoryWay = 'leave';
  /** Where the rows that were asked of last stand in the table. */
  #places: readonly number[] = [];
  readonly #asker: Asker = makeAsker<ShownKits>({
    ask: async (signal) => {
      const { source } = KitsElement;
      const { query, places, faults } = writeAsked(this.state.draft);
      if (faults.length > 0) return { kind: 'faults', faults };
      this.#places = places;
      return loadKits(query, { ...source, api: this.api ?? source.api }, signal);
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
    if (changed.has('kits') || changed.has('api') || !this.hasUpdated) this.#begin();
  }

  override render(): TemplateResult {
    const { state } = this;
    const language = this.closest('[lang]')?.getAttribute('lang') ?? '';
    const unit = unitOf(state.draft);
    return kitsView(
      { ...chooseKitsText([language]), state, unit, act: this.#actions },
      this.address,
    );
  }

  #begin(): void {
    const address = this.address ? location.search : '';
    const kept = this.remember ? readDraft(DRAFT) : '';
    this.#history = 'leave';
    this.#typedAt = '';
    this.#set({ ...readStart({ address, kept, kits: this.kits ?? '' }), faults: [] });
    this.#askNow();
  }

  readonly #readAddress = (): void => {
    if (this.address) this.#begin();
  };

  readonly #actions: KitsActions = {
    ...makeTableActions<KitsDraft>({
      list: LIST,
      columns: COLUMNS,
      most: MOST_ROWS,
      file: 'kits.csv',
      loadCsv: () => KitsElement.source.loadCsv(),
      read: () => this.state.draft,
      names: () => listNames(this.state.hasPrints),
      replace: (kind, draft, rows) => this.#replaceRows({ kind, rows }, draft),
      refuse: (fileFault) => this.#set({ fileFault }),
      sayIn: (draft, unit, currency = currencyOf(draft)) => {
        const facts = { called: {}, input: undefined };
        return { ...switchKits(draft, unit, facts).draft, currency };
      },
      currencyOf,
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
      const { called, ...next } = switchKits(draft, unit, { called: this.#called, input });
      this.#called = called;
      this.#decide(next);
    },
    payIn: (currency) => this.#decide({ draft: { ...this.state.draft, currency } }),
    retry: () => this.#askNow(),
    print: () => globalThis.print(),
  };

  #replaceRows(done: Pick<Done, 'kind' | 'rows'>, draft: KitsDraft): void {
    const before = this.state.draft;
    this.#decide({ draft, hasPrints: this.state.hasPrints || namesPrints(draft) });
    this.#set({ done: { ...done, before } });
  }

  #set(change: Partial<KitsState>): void {
    this.state = { ...this.state, ...change };
  }

  /** A change that was typed: asked for when typing rests. */
  #type(path: string, draft: KitsDraft): void {
    if (path !== this.#typedAt) this.#history = 'push';
    this.#typedAt = path;
    this.#change({ draft, isBusy: true });
    this.#asker.later();
  }

  /** A change that was chosen: asked for at once. */
  #decide(change: Partial<KitsState>): void {
    this.#typedAt = '';
    this.#history = 'push';
    this.#change(change);
    this.#askNow();
  }

  #change(change: Partial<KitsState>): void {
    this.#set({ done: undefined, fileFault: undefined, ...change });
    this.#keep();
  }

  #keep(): void {
    const beside = this.address ? location.search : '';
    if (this.remember) keepDraft(DRAFT, `${beside}#${writeQuery(this.state.draft)}`);
  }

  #askNow(): void {
    const { isEmpty, faults } = writeAsked(this.state.draft);
    const isAsked = !isEmpty && faults.length === 0;
    this.#asker[isAsked ? 'now' : 'stop']();
    this.#set({
      isBusy: isAsked,
      ...(!isAsked && { faults }),
      ...(isEmpty && { answer: undefined }),
    });
  }

  #take(loaded: LoadedKits): void {
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
    const detail: KitsDetail = { answer, from };
    this.dispatchEvent(new CustomEvent('ragbloom-kits', { detail, bubbles: true, composed: true }));
  }
}
