import { LitElement, type TemplateResult } from 'lit';
import type { Unit } from '#core/contract.ts';
import { dropFaulty, writeQuery } from '../../data/draft.ts';
import { keepDraft, readDraft } from '../../data/draft-store.ts';
import { type HistoryWay, keepAddress } from '../../data/keep-address.ts';
import { type LoadedWash, loadWash, type WashSource } from '../../data/load-wash.ts';
import { WASH_KEYS } from '../../data/names.ts';
import { readHostInput } from '../../data/read-host-input.ts';
import type { ShownWash } from '../../data/wash-answer-schema.ts';
import type { Called } from '../../fields/switch-unit.ts';
import { chooseWashText } from '../../text/wash-text.ts';
import { readStart } from './read-start.ts';
import { BLANK_CLOTH, BLANK_ROW, type Cloth, typeCell } from './swatch-table.ts';
import { switchWash } from './switch-wash.ts';
import type { WashActions } from './wash-context.ts';
import {
  chooseSizeKind,
  FIRST_STATE,
  hasNoField,
  setPlace,
  splitDraft,
  unitOf,
  type WashState,
  writeAsked,
  writeTyped,
} from './wash-state.ts';
import { washStyles } from './wash-styles.ts';
import { washView } from './wash-view.ts';

/** What the event `ragbloom-wash` carries. */
export interface WashDetail {
  /** The answer of the API, whole. */
  readonly answer: ShownWash;
  /** `device` where the service gave no answer. */
  readonly from: 'service' | 'device';
}

/** How long typing must rest before the service is asked, in milliseconds. */
const REST = 300;
/** Under this name what was typed is kept on the device. */
const DRAFT = 'wash';

type Typed = Pick<WashState, 'cloths' | 'draft'>;

/**
 * The wash, measured: swatches before and after become the shrink with its spread, the size after each wash, what to
 * sew for a size, and whether the faces will pucker.
 *
 * Attributes and properties
 * - `wash`: what to begin with, as a flat query of `/v1/wash-shrinkage`.
 * - `api`: origin of the service, without a slash at its end. Default: where the script came from.
 * - `address`: keep what was measured in the page's address, so that links and the back button work.
 * - `remember`: keep what was typed on this device, half rows and all.
 *   Without these two the element touches neither address nor storage.
 * - `lang`: language; default the page's, else English.
 *
 * Events
 * - `ragbloom-wash` (bubbles, composed): an answer is on the table; `detail` is a `WashDetail`.
 *
 * Slots
 * - default: what shows until the element is there.
 *
 * Parts: `swatches`, `drawing`, `figures`, `course`, `advice`, `quilt`, `marking`, `table`, `grounds`.
 *
 * Custom properties: `--ragbloom-ground`, `--ragbloom-sheet`, `--ragbloom-ink`, `--ragbloom-soft`, `--ragbloom-line`,
 * `--ragbloom-edge`, `--ragbloom-madder`, `--ragbloom-on-madder`, `--ragbloom-leaf`, `--ragbloom-display` (type),
 * `--ragbloom-gutter`.
 */
export class WashElement extends LitElement {
  static override styles = washStyles;
  static override properties = {
    wash: {},
    api: {},
    address: { type: Boolean },
    remember: { type: Boolean },
    state: { state: true },
  };

  /** Where every element asks; whoever registers it says where the core for the device is to be had. */
  static source: WashSource = {
    api: '',
    patience: 4000,
    loadCore: () => Promise.reject(new Error('none')),
  };

  declare wash: string | null | undefined;
  declare api: string | null | undefined;
  declare address: boolean;
  declare remember: boolean;
  declare private state: WashState;

  #called: Called = {};
  #asking = new AbortController();
  #rest: ReturnType<typeof setTimeout> | undefined;
  /** The place last typed into: one entry in the history for one field, not for each figure of it. */
  #typedAt = '';
  #history: HistoryWay = 'leave';

  constructor() {
    super();
    this.address = false;
    this.remember = false;
    this.state = FIRST_STATE;
  }

  override connectedCallback(): void {
    super.connectedCallback();
    globalThis.addEventListener('popstate', this.#readAddress);
    globalThis.addEventListener('afterprint', this.#putSheetAway);
  }

  override disconnectedCallback(): void {
    super.disconnectedCallback();
    globalThis.removeEventListener('popstate', this.#readAddress);
    globalThis.removeEventListener('afterprint', this.#putSheetAway);
    clearTimeout(this.#rest);
    this.#asking.abort();
  }

  override willUpdate(changed: Map<PropertyKey, unknown>): void {
    if (changed.has('wash') || changed.has('api') || !this.hasUpdated) this.#begin();
  }

  override render(): TemplateResult {
    const { state } = this;
    const language = this.closest('[lang]')?.getAttribute('lang') ?? '';
    const unit = unitOf(state.draft);
    return washView(
      { ...chooseWashText([language]), state, unit, act: this.#actions },
      this.address,
    );
  }

  /** Takes what the address, else the device, else the host has; with none of them, the invented shop's. */
  #begin(): void {
    const address = this.address ? location.search : '';
    const kept = this.remember ? readDraft(DRAFT) : '';
    this.#history = 'leave';
    this.#typedAt = '';
    this.#set({ ...readStart({ address, kept, wash: this.wash ?? '' }), faults: [] });
    void this.#ask(true);
  }

  readonly #readAddress = (): void => {
    if (this.address) this.#begin();
  };

  readonly #putSheetAway = (): void => {
    if (this.state.isSheet) this.#set({ isSheet: false });
  };

  readonly #actions: WashActions = {
    edit: (path, value) => this.#type(path, { draft: setPlace(this.state.draft, path, value) }),
    replace: (draft) => this.#decide({ draft }),
    typeCell: (index, row, name, typed) =>
      this.#typeCloth(index, `${row}.${name}`, (cloth) => typeCell(cloth, { row, name }, typed)),
    name: (index, change) =>
      this.#typeCloth(index, Object.keys(change).join(), (cloth) => ({ ...cloth, ...change })),
    addCloth: () => this.#decide({ cloths: [...this.state.cloths, BLANK_CLOTH] }),
    removeCloth: (cloth) =>
      this.#decide({ cloths: this.state.cloths.filter((_, index) => index !== cloth) }),
    clear: () =>
      this.#decide({ cloths: this.state.cloths.map((cloth) => ({ ...cloth, rows: [BLANK_ROW] })) }),
    measureIn: (unit) => this.#decide(this.#sayIn(unit)),
    give: (kind) => this.#decide({ draft: chooseSizeKind(this.state.draft, kind) }),
    show: (shown) => this.#set({ shown }),
    retry: () => void this.#ask(),
    print: () => globalThis.print(),
    printSheet: () => void this.#printSheet(),
  };

  #typeCloth(index: number, path: string, change: (cloth: Cloth) => Cloth): void {
    const cloths = this.state.cloths.map((cloth, at) => (at === index ? change(cloth) : cloth));
    this.#type(`${index}.${path}`, { cloths });
  }

  async #printSheet(): Promise<void> {
    this.#set({ isSheet: true });
    await this.updateComplete;
    globalThis.print();
  }

  #sayIn(unit: Unit): Typed {
    const { called, ...typed } = switchWash(this.state, unit, this.#called);
    this.#called = called;
    return typed;
  }

  #set(change: Partial<WashState>): void {
    this.state = { ...this.state, ...change };
  }

  /** A change that was typed: asked for when typing rests. */
  #type(path: string, change: Partial<Typed>): void {
    if (path !== this.#typedAt) this.#history = 'push';
    this.#typedAt = path;
    this.#change(change);
    this.#asking.abort();
    clearTimeout(this.#rest);
    this.#rest = setTimeout(() => void this.#ask(), REST);
  }

  /** A change that was chosen: asked for at once. */
  #decide(change: Partial<Typed>): void {
    this.#typedAt = '';
    this.#history = 'push';
    this.#change(change);
    void this.#ask();
  }

  #change(change: Partial<Typed>): void {
    this.#set(change);
    if (this.remember) keepDraft(DRAFT, writeQuery(writeTyped(this.state)));
  }

  /** Asks what the wash does; what an address asked for and cannot be had is told, and the rest asked for. */
  async #ask(isHost = false): Promise<void> {
    clearTimeout(this.#rest);
    this.#asking.abort();
    this.#asking = new AbortController();
    const { query, places, blanks } = writeAsked(this.state);
    if (blanks.length > 0) return this.#set({ faults: blanks, isBusy: false });
    this.#set({ isBusy: true });
    const { source } = WashElement;
    const asked = { ...source, api: this.api ?? source.api, isAhead: this.address };
    const loaded = await loadWash(query, asked, this.#asking.signal).catch(() => undefined);
    if (loaded === undefined) return;
    this.#set({ places });
    // A cell can be mended in its place; what has no field of its own could not be.
    const lost = loaded.kind === 'faults' && isHost ? loaded.faults.filter(hasNoField) : [];
    if (lost.length === 0) return this.#take(loaded);
    const kept = dropFaulty(readHostInput(query, WASH_KEYS).draft, lost);
    this.#set({ ...splitDraft(kept), hostFaults: [...this.state.hostFaults, ...lost] });
    return this.#ask();
  }

  #take(loaded: LoadedWash): void {
    const isUnreachable = loaded.kind === 'unreachable';
    const faults = loaded.kind === 'faults' ? loaded.faults : [];
    this.#set({ isBusy: false, isUnreachable, faults });
    if (loaded.kind !== 'answer') return;
    const { answer, from } = loaded;
    this.#set({ answer, from });
    const { page } = answer.links;
    if (this.address) keepAddress(page.slice(page.indexOf('?')), this.#history);
    this.#history = this.#typedAt === '' ? 'leave' : 'replace';
    const detail: WashDetail = { answer, from };
    this.dispatchEvent(new CustomEvent('ragbloom-wash', { detail, bubbles: true, composed: true }));
  }
}
