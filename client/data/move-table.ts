import type { CsvTool } from './csv-tool.ts';
import type { AnyDraft } from './draft.ts';
import { type Cell, isBlankRow, layCells, type Row } from './rows.ts';
import {
  type Column,
  type FileFault,
  type FileMeasures,
  type ReadTable,
  readTable,
  writeTable,
} from './table-file.ts';

type LoadCsv = () => Promise<CsvTool>;

/** Bytes of a file that are read: far more than any table holds. */
const MOST_BYTES = 1_000_000;

/** Reads the table out of a file that was chosen; one that is too long is read no further than that shows. */
export async function openTable(
  file: Blob,
  {
    columns,
    most,
    loadCsv,
  }: { readonly columns: readonly Column[]; readonly most: number; readonly loadCsv: LoadCsv },
): Promise<ReadTable> {
  try {
    const [text, tool] = await Promise.all([file.slice(0, MOST_BYTES).text(), loadCsv()]);
    return readTable(text, columns, { tool, most });
  } catch {
    return { ok: false, fault: { code: 'unreadable' } };
  }
}

/** Hands a table to the browser as a file to keep; false where there is nothing to write it with. */
export async function saveTable(
  name: string,
  table: FileMeasures & { readonly rows: readonly Row[]; readonly columns: readonly Column[] },
  loadCsv: LoadCsv,
): Promise<boolean> {
  const tool = await loadCsv().catch(() => undefined);
  if (tool === undefined) return false;
  const rows = table.rows.filter((row) => !isBlankRow(row));
  const text = writeTable(rows, table.columns, { ...table, tool });
  const link = document.createElement('a');
  link.download = name;
  link.href = URL.createObjectURL(new Blob([text], { type: 'text/csv' }));
  link.click();
  setTimeout(() => URL.revokeObjectURL(link.href), 10_000);
  return true;
}

/** A draft with what was pasted in it, or why it was not taken over. */
export type Pasted<Draft> =
  | { readonly ok: true; readonly draft: Draft; readonly rows: number }
  | { readonly ok: false; readonly fault: FileFault };

/**
 * Lays what was copied in a spreadsheet over a table: cells apart by tabs, quoted where they need it. Inches are
 * written with a quotation mark, so a text whose quotes do not pair is taken as it stands.
 */
export async function pasteTable<Draft extends AnyDraft>(
  {
    draft,
    cell,
    text,
  }: {
    readonly draft: Draft;
    readonly cell: Cell & { readonly names: readonly string[] };
    readonly text: string;
  },
  most: number,
  loadCsv: LoadCsv,
): Promise<Pasted<Draft>> {
  const tool = await loadCsv().catch(() => undefined);
  const read = tool?.readCells(text, { delimiter: '\t', most: most + 1 });
  const cells = read?.ok ? read.cells : splitCells(text);
  if (cell.row + cells.length > most) {
    return { ok: false, fault: { code: 'too-many-rows', row: most + 1, most } };
  }
  return { ok: true, draft: layCells(draft, cell, cells), rows: cells.length };
}

function splitCells(text: string): readonly (readonly string[])[] {
  return text
    .trimEnd()
    .split(/\r\n|[\n\r]/)
    .map((line) => line.split('\t'));
}
