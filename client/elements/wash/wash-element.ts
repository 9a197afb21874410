import type { TemplateResult } from 'lit';
import type { Unit } from '#core/contract.ts';
import type { Fault } from '#core/outcome.ts';
import type { AnyDraft } from '../../data/draft.ts';
import type { Loaded } from '../../data/load-answer.ts';
import type { WashSource } from '../../data/load-wash.ts';
import type { ShownWash } from '../../data/wash-answer-schema.ts';
import type { WashOnDevice } from '../../data/wash-on-device.ts';
import { sayFault } from '../../fields/say-fault.ts';
import type { Called } from '../../fields/switch-unit.ts';
import { AskingElement } from '../../host/asking-element.ts';
import { readStart } from '../../host/read-start.ts';
import { type WashText, washText } from '../../text/wash-text.ts';
import { BLANK_CLOTH, BLANK_ROW, type Cloth, typeCell } from './swatch-table.ts';
import { switchWash } from './switch-wash.ts';
import type { WashActions } from './wash-context.ts';
import { washErrand } from './wash-errand.ts';
import {
  chooseSizeKind,
  FIRST_OWN,
  setPlace,
  splitDraft,
  type Typed,
  unitOf,
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

/**
 * The wash, measured: swatches before and after become the shrink with its spread, the size after each wash, what to
 * sew for a size, and whether the faces will pucker.
 *
 * Attributes and properties: those of every element. `remember` keeps half rows too; `address` shows a bar at the foot
 * of a phone.
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
export class WashElement extends AskingElement<AnyDraft, ShownWash, WashText, WashOnDevice> {
  static override styles = washStyles;
  static override properties = { ...AskingElement.properties, own: { state: true } };

  /** Where every element asks; whoever registers it says where the core for the device is to be had. */
  static source: WashSource = {
    api: '',
    patience: 4000,
    loadCore: () => Promise.reject(new Error('none')),
  };

  /** What it knows beside its question and what came of that: the table and the quilt as they were typed. */
  declare private own: typeof FIRST_OWN;

  protected readonly errand = washErrand;
  protected override readonly readStart = readStart<AnyDraft>;
  protected readonly text = washText;

  #called: Called = {};

  constructor() {
    super();
    this.own = FIRST_OWN;
  }

  protected get source(): WashSource {
    return WashElement.source;
  }

  override connectedCallback(): void {
    super.connectedCallback();
    globalThis.addEventListener('afterprint', this.#putSheetAway);
  }

  override disconnectedCallback(): void {
    super.disconnectedCallback();
    globalThis.removeEventListener('afterprint', this.#putSheetAway);
  }

  protected tell({ text }: WashText, fault: Fault): string {
    return sayFault(text.faults, fault, text.faults.internal);
  }

  protected view(text: WashText): TemplateResult {
    const state = { ...this.status, ...this.own };
    const unit = unitOf(state.draft);
    const isLocked = (path: string) => this.isLocked(path);
    return washView({ ...text, state, unit, isLocked, act: this.#actions }, this.may(this.address));
  }

  readonly #putSheetAway = (): void => {
    if (this.own.isSheet) this.#know({ isSheet: false });
  };

  readonly #actions: WashActions = {
    edit: (path, value) => this.#write(path, { draft: setPlace(this.own.draft, path, value) }),
    replace: (draft) => this.#choose({ draft }),
    typeCell: (index, row, name, typed) =>
      this.#writeCloth(index, `${row}.${name}`, (cloth) => typeCell(cloth, { row, name }, typed)),
    name: (index, change) =>
      this.#writeCloth(index, Object.keys(change).join(), (cloth) => ({ ...cloth, ...change })),
    addCloth: () => this.#choose({ cloths: [...this.own.cloths, BLANK_CLOTH] }),
    removeCloth: (cloth) =>
      this.#choose({ cloths: this.own.cloths.filter((_, index) => index !== cloth) }),
    clear: () =>
      this.#choose({ cloths: this.own.cloths.map((cloth) => ({ ...cloth, rows: [BLANK_ROW] })) }),
    measureIn: (unit) => this.#measureIn(unit),
    give: (kind) => this.#choose({ draft: chooseSizeKind(this.own.draft, kind) }),
    show: (shown) => this.#know({ shown }),
    retry: () => this.ask(),
    print: () => globalThis.print(),
    printSheet: () => void this.#printSheet(),
  };

  async #printSheet(): Promise<void> {
    this.#know({ isSheet: true });
    await this.updateComplete;
    globalThis.print();
  }

  #measureIn(unit: Unit): void {
    if (this.isLocked('unit')) return;
    const { called, ...typed } = switchWash(this.own, unit, this.#called);
    this.#called = called;
    this.restate(writeTyped(typed));
    this.#choose(typed);
  }

  #know(change: Partial<typeof FIRST_OWN>): void {
    this.own = { ...this.own, ...change };
  }

  #writeCloth(index: number, path: string, change: (cloth: Cloth) => Cloth): void {
    const cloths = this.own.cloths.map((cloth, at) => (at === index ? change(cloth) : cloth));
    this.#write(`${index}.${path}`, { cloths });
  }

  /** A change that was typed at one place. */
  #write(path: string, change: Partial<Typed>): void {
    this.#know(change);
    this.type(path, writeTyped(this.own));
    this.#hold();
  }

  /** A change that was chosen. */
  #choose(change: Partial<Typed>): void {
    this.#know(change);
    this.decide(writeTyped(this.own));
    this.#hold();
  }

  /** Places that only the host may set are as it set them, whatever was typed. */
  #hold(): void {
    if (this.lockedPlaces.length === 0) return;
    const { cloths, draft } = splitDraft(this.status.draft);
    this.#know(this.isLocked('swatches') ? { cloths, draft } : { draft });
  }

  protected override laid(draft: AnyDraft): void {
    this.#know(splitDraft(draft));
  }

  /** Asks for whole pairs alone, and remembers where in the table each of them stands. */
  protected override async load(
    _draft: AnyDraft,
    source: WashSource,
    signal: AbortSignal,
  ): Promise<Loaded<ShownWash>> {
    const { query, places } = writeAsked(this.own);
    const loaded = await this.errand.load(query, source, signal);
    this.#know({ places });
    return loaded;
  }
}
