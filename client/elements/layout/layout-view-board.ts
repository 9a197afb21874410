import { html, nothing, type TemplateResult } from 'lit';
import { guard } from 'lit/directives/guard.js';
import { letterOf } from '#core/layout/letter-of.ts';
import { nameRow } from '#core/layout/name-row.ts';
import { isPinned } from '../../data/layout-draft.ts';
import { drawingView } from '../../drawing/drawing-view.ts';
import { drawBoard } from './draw-board.ts';
import type { LayoutContext, ShownGrid } from './layout-context.ts';
import { watchHold } from './watch-hold.ts';

/** Side of a large block and of the edge that bears letters and numbers, CSS pixels. */
const LARGE = 48;
const EDGE = 24;
/** More columns than these leave no room for letters on a narrow page, and on any. */
const MANY = 12;
const MOST = 26;

/** The quilt as a grid to change: the drawing, and over it a table that keyboard, finger and ear can use. */
export function boardView(context: LayoutContext, grid: ShownGrid): TemplateResult {
  const { board, words, act } = context;
  const { layout } = words;
  const columns = grid.cells[0]?.length ?? 0;
  const width = board.isLarge ? columns * LARGE + EDGE : '100%';
  const touching = new Set(grid.meetings.flatMap(({ places }) => places));
  const size = board.isLarge ? '' : columns > MOST ? 'many most' : columns > MANY ? 'many' : '';
  return html`<div class="scroll" part="board">
    <div class="board ${size} ${board.isLarge ? 'large' : ''}">
      <table
        role="grid"
        width=${width}
        aria-label=${layout.board(columns, grid.cells.length)}
        @keydown=${act.press}
        @click=${(event: Event) => onPlace(event, act.tap)}
        @pointerdown=${(event: PointerEvent) => watchHold(event, () => onPlace(event, act.pin))}
        @contextmenu=${(event: Event) => event.preventDefault()}
      >
        <thead>
          <tr>
            <th width=${EDGE}><span class="hidden">${layout.topLeft}</span><i aria-hidden="true">◤</i></th>
            ${Array.from({ length: columns }, (_, at) => html`<th scope="col"><span class="hidden">${layout.column(at + 1)}</span><i aria-hidden="true">${at + 1}</i></th>`)}
          </tr>
        </thead>
        <tbody>
          ${grid.cells.map((row, down) => rowView(context, grid, { row, down, touching }))}
        </tbody>
      </table>
      ${guard([grid.cells, grid.key], () => drawingView(drawBoard(grid), 'cloth'))}
    </div>
  </div>`;
}

function onPlace(event: Event, deed: (place: number) => void): void {
  const cell = event.composedPath().find((node) => node instanceof HTMLTableCellElement);
  const place = (cell as HTMLTableCellElement | undefined)?.dataset['place'];
  if (place !== undefined) deed(Number(place));
}

interface Row {
  readonly row: string;
  readonly down: number;
  readonly touching: ReadonlySet<number>;
}

/** A row is made anew only where something in it is another: a large grid answers as fast as a small one. */
function rowView(context: LayoutContext, grid: ShownGrid, { row, down, touching }: Row): unknown {
  const { board, words } = context;
  const first = down * row.length;
  const places = Array.from(row, (_, across) => first + across);
  const within = (place?: number) =>
    place !== undefined && place >= first && place < first + row.length ? place : -1;
  const marks = places.map((place) => (touching.has(place) ? '1' : '0')).join('');
  const keys = [row, grid.pins[down] ?? '', within(board.at), within(board.held), marks];
  return guard(
    [...keys, grid.key, words],
    () => html`<tr>
      <th scope="row"><span class="hidden">${words.layout.row(nameRow(down))}</span><i aria-hidden="true">${nameRow(down)}</i></th>
      ${places.map((place) => cellView(context, grid, { place, isTouching: touching.has(place) }))}
    </tr>`,
  );
}

function cellView(
  { board, words }: LayoutContext,
  grid: ShownGrid,
  { place, isTouching }: { readonly place: number; readonly isTouching: boolean },
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
  ><b aria-hidden="true">${letter}</b></td>`;
}

/** A print as people call it: its name, and its letter where that is another. */
export function namePrint({ names }: Pick<ShownGrid, 'names'>, letter: string): string {
  const name = names.find((_, at) => letterOf(at) === letter) ?? letter;
  return name === letter ? letter : `${letter} ${name}`;
}
