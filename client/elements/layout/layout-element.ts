import type { PropertyDeclarations, TemplateResult } from 'lit';
import type { Fault } from '#core/outcome.ts';
import { editDraft, writeQuery } from '../../data/draft.ts';
import { readHand, writeHand } from '../../data/hand-grid.ts';
import type { ShownLayout } from '../../data/is-layout-answer.ts';
import { putAddress } from '../../data/keep-address.ts';
import { type LayoutDraft, writePins } from '../../data/layout-draft.ts';
import type { LayoutOnDevice } from '../../data/layout-on-device.ts';
import type { Source } from '../../data/load-answer.ts';
import { LightElement } from '../../host/light-element.ts';
import { readStart } from '../../host/read-start.ts';
import { joinSources } from '../../text/join-sources.ts';
import { layoutSource } from '../../text/layout/source.ts';
import { lightSource } from '../../text/light/source.ts';
import type { LayoutActions, LayoutContext, LayoutDetail, ShownGrid } from './layout-context.ts';
import { layoutErrand } from './layout-errand.ts';
import {
  type BoardState,
  FIRST_BOARD,
  FIRST_ROOM,
  layAside,
  letGo,
  pinBlock,
  stepBack,
  type Tapped,
  tapBlock,
} from './layout-state.ts';
import { layoutStyles } from './layout-styles.ts';
import { layoutView } from './layout-view.ts';
import { fitHand, readGrid } from './read-grid.ts';
import { sayLayoutFault } from './say-layout-fault.ts';
import { watchPrint } from './watch-print.ts';
import { watchRoom } from './watch-room.ts';

type Words = LayoutContext['words'];

/**
 * Where each print goes: a grid to change by finger and by key. Two blocks change places, a block is pinned, another
 * arrangement is asked for; what touches is told at once, and a sheet for the floor is printed.
 *
 * Attributes and properties: those of every element. With `address` the question stands in the query of the page and a
 * grid that was laid by hand in its fragment, so that a link is this very grid.
 *
 * Events
 * - `ragbloom-layout` (bubbles, composed): an answer is on the table, or a hand changed the grid; `detail` is a
 *   `LayoutDetail`.
 *
 * Slots
 * - default: what shows until the element is there.
 *
 * Parts: `ask`, `size`, `prints`, `notices`, `board`, `figures`, `link`, `floor`.
 *
 * Custom properties: `--ragbloom-sheet`, `--ragbloom-ink`, `--ragbloom-soft`, `--ragbloom-line`,
 * `--ragbloom-edge`, `--ragbloom-madder`, `--ragbloom-on-madder`, `--ragbloom-display` (type),
 * `--ragbloom-figure` (size of the figures), `--ragbloom-gap`, `--ragbloom-border`, `--ragbloom-radius`.
 */
export class LayoutElement extends LightElement<LayoutDraft, ShownLayout, Words, LayoutOnDevice> {
  static override styles = layoutStyles;
  static override properties: PropertyDeclarations = {
    ...LightElement.properties,
    board: { state: true },
    room: { state: true },
    isPrinting: { state: true },
  };

  /** Where every element asks; whoever registers it says where the core for the device is to be had. */
  static source: Source<LayoutOnDevice> = {
    api: '',
    patience: 4000,
    loadCore: () => Promise.reject(new Error('none')),
  };

  declare private board: BoardState;
  /** Width that the grid may take, CSS pixels. */
  declare private room: number;
  declare private isPrinting: boolean;

  protected readonly errand = layoutErrand;
  protected override readonly readStart = readStart<LayoutDraft>;
  protected readonly text = joinSources({ light: lightSource, layout: layoutSource });
  #grid: ShownGrid | undefined;
  readonly #memo: LayoutContext['memo'] = new Map();
  /** What is typed on at one place is one change to undo. */
  #typedAt = '';

  constructor() {
    super();
    Object.assign(this, { board: FIRST_BOARD, room: FIRST_ROOM, isPrinting: false });
  }

  protected get source(): Source<LayoutOnDevice> {
    return LayoutElement.source;
  }

  /** The query of this very grid: as it was laid by hand, else as it was worked out. */
  override get value(): string {
    const hand = this.#hand;
    if (hand === undefined || super.value === '') return super.value;
    return writeQuery(writePins(this.status.draft, hand));
  }

  override set value(query: string) {
    super.value = query;
  }

  override connectedCallback(): void {
    super.connectedCallback();
    globalThis.addEventListener('popstate', this.#readFragment);
    this.#printing.start();
    this.#readFragment();
  }

  override disconnectedCallback(): void {
    super.disconnectedCallback();
    globalThis.removeEventListener('popstate', this.#readFragment);
    this.#printing.stop();
  }

  protected override begin(draft: string): void {
    this.board = FIRST_BOARD;
    super.begin(draft);
  }

  protected override tell(words: Words, fault: Fault): string {
    return sayLayoutFault(words.layout, fault) ?? super.tell(words, fault);
  }

  protected view(words: Words): TemplateResult {
    const { status, board } = this;
    const { answer, draft } = status;
    this.#grid = answer && readGrid({ answer, draft, hand: board.hand }, this.#grid);
    return layoutView({
      status,
      words,
      board,
      grid: this.#grid,
      address: `${this.api ?? this.source.api}/v1/layout?${this.value}`,
      room: this.room,
      memo: this.#memo,
      isPrinting: this.isPrinting,
      isLocked: (path) => this.isLocked(path),
      tell: (fault) => this.tell(words, fault),
      act: this.#actions,
    });
  }

  readonly #actions: LayoutActions = {
    type: (path, draft) => {
      if (path !== this.#typedAt) this.#ask();
      this.#typedAt = path;
      this.type(path, draft);
    },
    name: (path, draft) => this.type(path, draft),
    choose: (draft) => {
      this.#ask();
      this.decide(draft);
    },
    another: () => {
      const { draft, answer } = this.status;
      this.#actions.choose(editDraft(draft, 'seed', `${(answer?.seed ?? 1) + 1}`));
    },
    tap: (place) => this.#change((tap) => tapBlock(this.board, { ...tap, place })),
    pin: (place) => this.#change((tap) => pinBlock(this.board, { ...tap, place })),
    go: (place) => void this.#go(place),
    letGo: () => this.#know(letGo(this.board)),
    fit: watchRoom((room) => Object.assign(this, { room })),
    turnTo: (mode) => this.#know({ mode, held: undefined }),
    showLarge: (isLarge) => this.#know({ isLarge }),
    undo: () => this.#step(true),
    redo: () => this.#step(false),
    retry: () => this.ask(),
    print: () => globalThis.print(),
  };

  /** What a hand laid and is on the table. */
  get #hand(): BoardState['hand'] {
    return fitHand(this.board.hand, this.status.answer);
  }

  get #snapshot() {
    return { draft: this.status.draft, hand: this.board.hand };
  }

  #know(change: Partial<BoardState>): void {
    this.board = { ...this.board, ...change };
  }

  /** Something else is asked for: what was laid by hand goes, and can be had again. */
  #ask(): void {
    this.#typedAt = '';
    this.board = layAside(this.board, this.#snapshot);
  }

  #change(deed: (tap: Pick<ShownGrid, 'cells'> & { draft: LayoutDraft }) => Tapped): void {
    if (this.#grid === undefined || this.isDisabled || this.isLocked('fixed')) return;
    this.#typedAt = '';
    const { draft, hand } = this.#snapshot;
    const done = deed({ cells: this.#grid.cells, draft });
    this.board = done.board;
    this.set({ draft: done.draft });
    // With a pin less, fewer pairs may be possible.
    if (done.board.deed?.kind === 'unpinned') this.type('fixed', done.draft);
    if (done.draft !== draft || done.board.hand !== hand) this.#tellChange();
  }

  async #go(at: number): Promise<void> {
    this.#know({ at });
    await this.updateComplete;
    this.renderRoot.querySelector<HTMLElement>(`[data-place="${at}"]`)?.focus();
  }

  #step(isBack: boolean): void {
    const { board, snapshot } = stepBack(this.board, this.#snapshot, isBack);
    if (snapshot === undefined) return;
    this.board = board;
    if (writeQuery(snapshot.draft) !== writeQuery(this.status.draft)) this.decide(snapshot.draft);
    this.#tellChange();
  }

  /** An answer that came after a step back leaves in the address what a hand had done. */
  protected override welcome(): void {
    if (this.board.hand !== undefined) queueMicrotask(() => this.#keepHand());
  }

  #keepHand(): void {
    const address = `?${writeQuery(this.status.draft)}${writeHand(this.#hand)}`;
    if (this.may(this.address)) putAddress(address, 'replace');
  }

  /** The address and the host follow what a hand did. */
  #tellChange(): void {
    const hand = this.#hand;
    this.#keepHand();
    const { answer, from } = this.status;
    if (answer === undefined) return;
    const detail: LayoutDetail = { answer, from, ...(hand && { cells: hand }) };
    this.dispatchEvent(
      new CustomEvent('ragbloom-layout', { detail, bubbles: true, composed: true }),
    );
  }

  readonly #readFragment = (): void => {
    if (this.may(this.address)) this.board = { ...FIRST_BOARD, hand: readHand(location.hash) };
  };

  readonly #printing = watchPrint((isPrinting) => {
    this.isPrinting = isPrinting;
    this.performUpdate();
  });
}
