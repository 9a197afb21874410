import { html, nothing, type TemplateResult } from 'lit';

/** One column to type into. */
export interface ClothColumn {
  readonly name: string;
  readonly label: string;
  /** What its figures are in. */
  readonly unit?: string | undefined;
  /** What holds where nothing is typed. */
  readonly usual?: string;
  /** The choices, where it is not typed. */
  readonly choices?: readonly (readonly [value: string, label: string])[];
  readonly isText?: boolean;
}

/** A place in the table. */
export interface ClothCell {
  readonly row: number;
  readonly name: string;
}

/** A table of cloth, a row a piece, with an empty row at its foot. */
export interface ClothTable {
  readonly caption: string;
  readonly columns: readonly ClothColumn[];
  readonly rows: readonly Readonly<Record<string, string>>[];
  readonly most: number;
  /** What stands before the name of a row. */
  readonly swatch: (row: number) => TemplateResult | typeof nothing;
  readonly faultAt: (cell: ClothCell) => string | undefined;
  readonly words: {
    readonly cell: (row: number, column: string) => string;
    readonly remove: (name: string) => string;
    readonly row: (row: number) => string;
  };
  readonly onType: (cell: ClothCell, typed: string) => void;
  readonly onDrop: (row: number) => void;
  /** A block of cells from a spreadsheet. */
  readonly onPaste: (cell: ClothCell, text: string) => void;
}

/**
 * A table to type cloth into. It grows: below the last row there is always an empty one. Enter and the arrows go up
 * and down, Tab goes on. On a narrow screen each row is two lines. What is wrong stands under its row, tied to its cell.
 */
export function clothTable(table: ClothTable): TemplateResult {
  const { columns, rows, most } = table;
  const shown = rows.length < most ? [...rows, {}] : rows;
  return html`<table
    role="table"
    class="cloths"
    aria-label=${table.caption}
    @paste=${(event: ClipboardEvent) => paste(table, event)}
    @keydown=${move}
  >
    <thead role="rowgroup">
      <tr role="row">
        ${columns.map(({ name, label, unit }) => html`<th role="columnheader" class=${name} scope="col">${headView(label, unit)}</th>`)}
        <td role="cell" class="drop"></td>
      </tr>
    </thead>
    <tbody role="rowgroup">
      ${shown.map((row, at) => rowView(table, row, at))}
    </tbody>
  </table>`;
}

function headView(label: string, unit: string | undefined) {
  return html`${label}${unit ? html` <small>${unit}</small>` : nothing}`;
}

function rowView(table: ClothTable, row: ClothTable['rows'][number], at: number): TemplateResult {
  const { columns, words } = table;
  const said = columns.flatMap((column) => {
    const fault = table.faultAt({ row: at, name: column.name });
    return fault === undefined ? [] : [{ ...column, fault }];
  });
  const isThere = at < table.rows.length;
  const name = row['id'] || words.row(at + 1);
  return html`<tr role="row">
    ${columns.map(
      (column) => html`<td role="cell" class=${column.name}>
        <small class="tag" aria-hidden="true">${headView(column.label, column.unit)}</small>
        ${column.name === 'id' ? table.swatch(at) : nothing}
        ${cellView(table, column, { row: at, typed: row[column.name] ?? '', said })}
      </td>`,
    )}
    <td role="cell" class="drop">
      ${isThere ? html`<button aria-label=${words.remove(name)} @click=${() => table.onDrop(at)}>✕</button>` : nothing}
    </td>
    ${
      said.length === 0
        ? nothing
        : html`<td role="cell" class="said">
            ${said.map(({ label, fault, ...column }) => html`<p class="fault" id="cell-${at}-${column.name}-fault"><b>${label}:</b> ${fault}</p>`)}
          </td>`
    }
  </tr>`;
}

interface CellState {
  readonly row: number;
  readonly typed: string;
  readonly said: readonly { readonly name: string }[];
}

function cellView(table: ClothTable, column: ClothColumn, { row, typed, said }: CellState) {
  const { name, label, choices, usual = '', isText = false } = column;
  const id = `cell-${row}-${name}`;
  const isWrong = said.some((one) => one.name === name);
  const cell = { row, name };
  const aria = {
    label: table.words.cell(row + 1, label),
    invalid: isWrong ? 'true' : nothing,
    by: isWrong ? `${id}-fault` : nothing,
  } as const;
  const type = ({ target }: Event) =>
    table.onType(cell, (target as HTMLInputElement | HTMLSelectElement).value);
  if (choices !== undefined) {
    const isKnown = typed === '' || choices.some(([value]) => value === typed);
    const all = isKnown ? choices : [...choices, [typed, typed] as const];
    return html`<select id=${id} data-cell="${row}.${name}" aria-label=${aria.label} aria-invalid=${aria.invalid} aria-describedby=${aria.by} @change=${type}>
      ${all.map(([value, said]) => html`<option value=${value} .selected=${value === (typed || all[0]?.[0])}>${said}</option>`)}
    </select>`;
  }
  return html`<input
    id=${id}
    data-cell="${row}.${name}"
    type="text"
    inputmode=${isText ? 'text' : 'decimal'}
    autocomplete="off"
    placeholder=${usual}
    .value=${typed}
    aria-label=${aria.label}
    aria-invalid=${aria.invalid}
    aria-describedby=${aria.by}
    @input=${type}
  />`;
}

function readCell(target: EventTarget | null): ClothCell | undefined {
  const [row, name] =
    (target instanceof HTMLElement ? target.dataset['cell'] : '')?.split('.') ?? [];
  return name === undefined ? undefined : { row: Number(row), name };
}

/** More than one cell is laid over the table; a single one goes where it would go anyway. */
function paste(table: ClothTable, event: ClipboardEvent): void {
  const text = event.clipboardData?.getData('text/plain') ?? '';
  const cell = readCell(event.target);
  if (cell === undefined || !/[\t\n\r]/.test(text.trimEnd())) return;
  event.preventDefault();
  table.onPaste(cell, text);
}

/** To the same column of the row above or below. */
function move(event: KeyboardEvent): void {
  const cell = readCell(event.target);
  const isList = event.target instanceof HTMLSelectElement;
  const step = { Enter: 1, ArrowDown: 1, ArrowUp: -1 }[event.key];
  if (cell === undefined || step === undefined || (isList && event.key !== 'Enter')) return;
  const table = (event.currentTarget as HTMLElement).querySelector<HTMLElement>(
    `[data-cell="${cell.row + step}.${cell.name}"]`,
  );
  if (table === null) return;
  event.preventDefault();
  table.focus();
}
