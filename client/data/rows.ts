import type { Fault, Path } from '#core/outcome.ts';
import type { AnyDraft } from './draft.ts';

/** One row of a table as typed, by the names of its cells. */
export type Row = Readonly<Record<string, string>>;

/** A cell by the names that its path in the request has. */
export interface Cell {
  /** The list that the rows are of, such as `pieces`. */
  readonly list: string;
  readonly row: number;
  readonly name: string;
}

/**
 * The rows of one list in a draft, in their order; places that were left out are empty rows.
 *
 * @example
 * readRows({ 'pieces.1.id': 'Moss', unit: 'in' }, 'pieces') // => [{}, { id: 'Moss' }]
 */
export function readRows(draft: AnyDraft, list: string): readonly Row[] {
  const rows: Record<string, string>[] = [];
  for (const [path, typed = ''] of Object.entries(draft)) {
    const [head, at, name] = path.split('.');
    if (head !== list || name === undefined || !/^\d{1,3}$/.test(at ?? '')) continue;
    const row = Number(at);
    rows[row] = { ...rows[row], [name]: typed };
  }
  return Array.from(rows, (row) => row ?? {});
}

/** A draft with other rows in one list. */
export function writeRows<Draft extends AnyDraft>(
  draft: Draft,
  list: string,
  rows: readonly Row[],
): Draft {
  const others = Object.entries(draft).filter(([path]) => !path.startsWith(`${list}.`));
  const cells = rows.flatMap((row, at) =>
    Object.entries(row).map(([name, typed]) => [`${list}.${at}.${name}`, typed] as const),
  );
  return { ...Object.fromEntries([...others, ...cells]) } as Draft;
}

/**
 * Whether nothing was typed into a row: what it is for was chosen for it, and is not counted.
 *
 * @example
 * isBlankRow({ role: 'top', id: ' ' }) // => true
 */
export function isBlankRow(row: Row): boolean {
  return Object.entries(row).every(([name, typed]) => name === 'role' || typed.trim() === '');
}

/** Types into one cell. A new row is for what the one above it is for. */
export function typeInRow<Draft extends AnyDraft>(draft: Draft, cell: Cell, typed: string): Draft {
  const rows = [...readRows(draft, cell.list)];
  const role = rows[cell.row - 1]?.['role'] ?? 'top';
  rows[cell.row] = { role, ...rows[cell.row], [cell.name]: typed };
  return writeRows(
    draft,
    cell.list,
    Array.from(rows, (row) => row ?? {}),
  );
}

/** Takes a row out; those below move up. */
export function dropRow<Draft extends AnyDraft>(draft: Draft, list: string, row: number): Draft {
  return writeRows(
    draft,
    list,
    readRows(draft, list).filter((_, at) => at !== row),
  );
}

/**
 * Lays a block of cells over a list from one cell on, rows growing where it is longer; cells beyond the last column
 * are left off.
 *
 * @param names the columns in the order in which they stand.
 */
export function layCells<Draft extends AnyDraft>(
  draft: Draft,
  cell: Cell & { readonly names: readonly string[] },
  block: readonly (readonly string[])[],
): Draft {
  const first = cell.names.indexOf(cell.name);
  return block.reduce(
    (laid, texts, down) =>
      texts.reduce((next, typed, across) => {
        const name = cell.names[first + across];
        if (name === undefined) return next;
        const text = name === 'role' ? typed.trim().toLowerCase() : typed.trim();
        return typeInRow(next, { list: cell.list, row: cell.row + down, name }, text);
      }, laid),
    draft,
  );
}

/** A draft to ask with: without empty rows and cells, and where each of its rows stands in the table. */
export interface PackedRows {
  readonly draft: AnyDraft;
  readonly places: readonly number[];
}

/**
 * Leaves out what is empty, so that a row being begun at the foot of a table is no fault.
 *
 * @example
 * packRows({ 'pieces.0.role': 'top', 'pieces.1.id': 'Moss', 'pieces.1.print': '' }, 'pieces') // => { draft: { 'pieces.0.id': 'Moss' }, places: [1] }
 */
export function packRows(draft: AnyDraft, list: string): PackedRows {
  const rows = readRows(draft, list);
  const places = rows.flatMap((row, at) => (isBlankRow(row) ? [] : [at]));
  const kept = places.map((at) =>
    Object.fromEntries(Object.entries(rows[at] ?? {}).filter(([, typed]) => typed.trim() !== '')),
  );
  return { draft: writeRows(draft, list, kept), places };
}

/** A fault of a packed draft at the row where it stands in the table. */
export function placeFault(fault: Fault, list: string, places: readonly number[]): Fault {
  const [head, at, ...rest]: Path = fault.path;
  const row = places[Number(at)];
  if (head !== list || row === undefined) return fault;
  return { ...fault, path: [list, row, ...rest] };
}
