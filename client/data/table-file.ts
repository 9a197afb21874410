import type { Unit } from '#core/contract.ts';
import type { CsvTool } from './csv-tool.ts';
import type { Row } from './rows.ts';

/** A column of a file: its name in the request, its name in the file, and whether a file may do without it. */
export interface Column {
  readonly name: string;
  readonly head: string;
  readonly isNeeded?: boolean;
  /** What its figures are in, written behind its head. */
  readonly measure?: 'length' | 'money';
}

/** What is wrong with a file as a whole; rows are counted as a spreadsheet counts them, the head being row 1. */
export interface FileFault {
  readonly code: 'empty-file' | 'no-column' | 'stray-quote' | 'too-many-rows' | 'unreadable';
  readonly row?: number;
  readonly column?: string;
  readonly most?: number;
}

export type ReadTable =
  | {
      readonly ok: true;
      readonly rows: readonly Row[];
      readonly unit?: Unit;
      readonly currency?: string;
    }
  | { readonly ok: false; readonly fault: FileFault };

/** What a file says beside its rows. */
export interface FileMeasures {
  readonly unit: Unit;
  readonly currency?: string;
}

/**
 * Writes the rows of a table as a file: a head that tells the unit, then a line a row.
 */
export function writeTable(
  rows: readonly Row[],
  columns: readonly Column[],
  { tool, unit, currency }: FileMeasures & { readonly tool: Pick<CsvTool, 'writeCells'> },
): string {
  const measures = { length: unit, money: currency };
  const heads = columns.map(({ head, measure }) => {
    const said = measure && measures[measure];
    return said === undefined ? head : `${head} (${said})`;
  });
  return tool.writeCells([heads, ...rows.map((row) => columns.map(({ name }) => row[name] ?? ''))]);
}

/**
 * Reads a file that a spreadsheet saved: columns in any order by their heads, what is in no column of ours passed over.
 *
 * @param most rows that the table takes.
 */
export function readTable(
  text: string,
  columns: readonly Column[],
  { tool, most }: { readonly tool: Pick<CsvTool, 'readCells'>; readonly most: number },
): ReadTable {
  const read = tool.readCells(text, { most: most + 2 });
  if (!read.ok) return { ok: false, fault: { code: 'stray-quote', row: read.row } };
  const [heads = [], ...lines] = read.cells;
  if (lines.length === 0) return { ok: false, fault: { code: 'empty-file' } };
  if (lines.length > most) {
    return { ok: false, fault: { code: 'too-many-rows', row: most + 2, most } };
  }
  const places = columns.map(({ head }) => heads.findIndex((said) => bare(said) === head));
  const missing = columns.find(({ isNeeded }, at) => isNeeded && (places[at] ?? -1) < 0);
  if (missing !== undefined) {
    return { ok: false, fault: { code: 'no-column', row: 1, column: missing.head } };
  }
  const rows = lines.map((line) => readLine(line, columns, places));
  return { ok: true, rows, ...readMeasures(heads) };
}

function readLine(
  line: readonly string[],
  columns: readonly Column[],
  places: readonly number[],
): Row {
  const cells = columns.flatMap(({ name }, at) => {
    const typed = (line[places[at] ?? -1] ?? '').trim();
    if (typed === '') return [];
    return [[name, name === 'role' ? typed.toLowerCase() : typed] as const];
  });
  return { role: 'top', ...Object.fromEntries(cells) };
}

/** A head without what stands in brackets behind it. */
function bare(head: string): string {
  return head.replace(/\(.*$/, '').trim().toLowerCase();
}

function readMeasures(heads: readonly string[]): { unit?: Unit; currency?: string } {
  const said = heads.flatMap((head) => /\(([^)]*)\)/.exec(head)?.[1]?.trim() ?? []);
  const unit = said.find((word): word is Unit => word === 'in' || word === 'cm');
  const currency = said.find((word) => /^[A-Z]{3}$/.test(word));
  return { ...(unit && { unit }), ...(currency && { currency }) };
}
