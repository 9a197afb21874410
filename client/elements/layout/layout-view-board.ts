import { html, nothing, type TemplateResult } from 'lit';
import { ref } from 'lit/directives/ref.js';
import { letterOf } from '#core/layout/letter-of.ts';
import type { Meeting } from '#core/layout/list-touching.ts';
import { nameRow } from '#core/layout/name-row.ts';
import { isPinned } from '../../data/layout-draft.ts';
import { drawingView } from '../../drawing/drawing-view.ts';
import { drawMeetings, drawRow } from './draw-board.ts';
import { ifChanged } from './if-changed.ts';
import type { LayoutContext, ShownGrid } from './layout-context.ts';
import { pressKey } from './press-key.ts';
import { watchHold } from './watch-hold.ts';

/** Least side of a block for a finger, and of the edge that bears letters and numbers, CSS pixels. */
const FINGER = 44;
const EDGE = 24;
/** The same for a mouse, where there is room for more. */
const MOUSE = 24;
/** No wider than this a page is a phone's. */
const NARROW = 480;
/** Smaller blocks have no room for letters. */
const LEGIBLE = 22;
/** More blocks than this are too small for fine figures. */
const FEW = 150;

/** How large the blocks are shown. */
interface Scale {
  readonly isLarge: boolean;
  /** The grid is wider than the page. */
  readonly isWide: boolean;
  readonly isLegible: boolean;
}

/** Large where the whole would have blocks too small to hit, unless somebody chose. */
export function findScale({ board, room }: LayoutContext, columns: number): Scale {
  const side = (room - EDGE) / columns;
  const isLarge = board.isLarge ?? side < (room > NARROW ? MOUSE : FINGER);
  return {
    isLarge,
    isWide: isLarge && side < FINGER,
    isLegible: isLarge || side >= LEGIBLE,
  };
}

/** The quilt as a grid to change: the cloth drawn, and over it a table that keyboard, finger and ear can use. */
export function boardView(context: LayoutContext, grid: ShownGrid): TemplateResult {
  const { words, act, memo } = context;
  const { layout } = words;
  forgetRows(context, grid.cells.length);
  const columns = grid.cells[0]?.length ?? 0;
  const numbers = Array.from({ length: columns }, (_, at) => at + 1);
  const { isLarge, isWide, isLegible } = findScale(context, columns);
  const standing = { at: context.board.at, columns, rows: grid.cells.length };
  const inRows = groupMeetings(grid, columns);
  const touching = new Set(grid.meetings.flatMap(({ places }) => places));
  return html`<div class="scroll" part="board" ${ref(act.fit)}>
      <table
        role="grid"
        class="board ${isLegible ? '' : 'small'}"
        width="100%"
        aria-label=${layout.board(columns, grid.cells.length)}
        aria-readonly=${context.isLocked('fixed') ? 'true' : nothing}
        @keydown=${(event: KeyboardEvent) => pressKey(event, standing, act)}
        @click=${(event: Event) => onPlace(event, act.tap)}
        @pointerdown=${(event: PointerEvent) => onPlace(event, (place) => watchHold(event, () => act.pin(place)))}
        @contextmenu=${(event: Event) => event.preventDefault()}
      >
        <colgroup>
          <col width=${EDGE}>
          ${ifChanged(memo, ['columns', columns, isLarge], () => numbers.map(() => html`<col width=${isLarge ? FINGER : nothing}>`))}
        </colgroup>
        <thead>
          <tr>
            <th><span class="hidden">${layout.topLeft}</span><i aria-hidden="true">◤</i></th>
            ${ifChanged(memo, ['heads', columns, words], () => numbers.map((number) => html`<th scope="col"><span class="hidden">${layout.column(number)}</span><i aria-hidden="true">${number}</i></th>`))}
          </tr>
        </thead>
        <tbody>
          ${grid.cells.map((row, down) => rowView(context, grid, { row, down, touching, meetings: inRows.get(down) ?? NONE }))}
        </tbody>
      </table>
    </div>
    ${isWide ? html`<p class="soft off">${layout.wide}</p>` : ''}`;
}

const NONE: readonly Meeting[] = [];

/** Rows that are gone from the view come back anew. */
function forgetRows({ memo }: LayoutContext, rows: number): void {
  for (const place of memo.keys()) {
    const [kind, row] = place.split(' ');
    if ((kind === 'row' || kind === 'cloth') && Number(row) >= rows) memo.delete(place);
  }
}

/** The meetings by the row of their first block. */
function groupMeetings({ meetings }: ShownGrid, columns: number) {
  const rows = new Map<number, Meeting[]>();
  for (const meeting of meetings) {
    const row = Math.floor(meeting.places[0] / columns);
    rows.set(row, [...(rows.get(row) ?? []), meeting]);
  }
  return rows;
}

/** Has a deed done on the block that an event is about; an event tells that only while it is dispatched. */
function onPlace(event: Event, deed: (place: number) => void): void {
  const cell = event.composedPath().find((node) => node instanceof HTMLTableCellElement);
  const place = (cell as HTMLTableCellElement | undefined)?.dataset['place'];
  if (place !== undefined) deed(Number(place));
}

interface Row {
  readonly row: string;
  readonly down: number;
  readonly touching: ReadonlySet<number>;
  /** Of its blocks with those beside and below. */
  readonly meetings: readonly Meeting[];
}

/** A row is made anew only where something in it is another: a large grid answers as fast as a small one. */
function rowView(context: LayoutContext, grid: ShownGrid, laid: Row): unknown {
  const { board, words } = context;
  const { row, down, touching, meetings } = laid;
  const first = down * row.length;
  const places = Array.from(row, (_, across) => first + across);
  const within = (place = -1) => (place >= first && place < first + row.length ? place : -1);
  const marks = places.map((place) => (touching.has(place) ? '1' : '0')).join('');
  const met = meetings.map(({ places: [one, other] }) => `${one} ${other}`).join();
  const keys = [row, within(board.at), within(board.held), marks, met, grid.pins[down]];
  return ifChanged(
    context.memo,
    [`row ${down}`, ...keys, grid.key, words],
    () => html`<tr>
      <th scope="row"><span class="hidden">${words.layout.row(nameRow(down))}</span><i aria-hidden="true">${nameRow(down)}</i></th>
      ${places.map((place) =>
        cellView(context, grid, {
          place,
          isTouching: touching.has(place),
          cloth: place === first ? clothView(context, grid, laid) : undefined,
        }),
      )}
    </tr>`,
  );
}

/** The cloth of a whole row below its blocks, and the marks of what touches above them. */
function clothView({ memo }: LayoutContext, grid: ShownGrid, laid: Row): unknown {
  const { cells, colorOf, key } = grid;
  const { row, down, meetings } = laid;
  const isFine = row.length * cells.length <= FEW;
  return [
    ifChanged(memo, [`cloth ${down}`, row, key, isFine], () =>
      drawingView(drawRow({ row, down, colorOf, isFine }), 'cloth'),
    ),
    meetings.length === 0 ? '' : drawingView(drawMeetings(meetings, row.length), 'meetings'),
  ];
}

interface Cell {
  readonly place: number;
  readonly isTouching: boolean;
  readonly cloth: unknown;
}

function cellView(
  { board, words }: LayoutContext,
  grid: ShownGrid,
  { place, isTouching, cloth = '' }: Cell,
): TemplateResult {
  const { layout } = words;
  const columns = grid.cells[0]?.length ?? 1;
  const row = Math.floor(place / columns);
  const letter = grid.cells[row]?.[place % columns] ?? '';
  const pinned = isPinned(grid.pins, columns, place);
  const isHeld = board.held === place;
  const said = [
    layout.cell(nameRow(row), (place % columns) + 1, namePrint(grid, letter)),
    ...(pinned ? [layout.pinned] : []),
    ...(isHeld ? [layout.held] : []),
    ...(isTouching ? [layout.touching] : []),
  ];
  return html`<td
    data-place=${place}
    tabindex=${board.at === place ? 0 : -1}
    aria-selected=${isHeld ? 'true' : nothing}
    aria-label=${said.join(', ')}
    class="${isHeld ? 'held' : ''} ${pinned ? 'pinned' : ''}"
  >${cloth}<b aria-hidden="true">${letter}</b></td>`;
}

/** A print as people call it: its name, and its letter where that is another. */
export function namePrint({ names }: Pick<ShownGrid, 'names'>, letter: string): string {
  const name = names.find((_, at) => letterOf(at) === letter) ?? letter;
  return name === letter ? letter : `${letter} ${name}`;
}
