import type { Unit } from '#core/contract.ts';
import type { CsvTool } from './csv-tool.ts';
import type { AnyDraft } from './draft.ts';
import { openTable, pasteTable, saveTable } from './move-table.ts';
import { readRows, writeRows } from './rows.ts';
import type { Column, FileFault } from './table-file.ts';

/** Where answers come from, and what reads and writes files. */
export type TableSource<Answers> = Answers & { readonly loadCsv: () => Promise<CsvTool> };

const nowhere = () => Promise.reject(new Error('none'));

/** Before anybody said where anything is to be had. */
export const NO_SOURCE = { api: '', patience: 4000, loadCore: nowhere, loadCsv: nowhere };

/** What was done to a whole table at once. */
export type TableChange = 'opened' | 'pasted' | 'cleared';

/** A table of an element, as far as filling and emptying it goes. */
export interface TableHandle<Draft extends AnyDraft> {
  readonly list: string;
  readonly columns: readonly Column[];
  readonly most: number;
  /** The name under which it is saved. */
  readonly file: string;
  readonly loadCsv: () => Promise<CsvTool>;
  readonly read: () => Draft;
  /** The columns that are shown, in their order. */
  readonly names: () => readonly string[];
  readonly replace: (kind: TableChange, draft: Draft, rows: number) => void;
  readonly refuse: (fault: FileFault) => void;
  /** The draft in the unit and the currency of a file. */
  readonly sayIn: (draft: Draft, unit: Unit, currency: string | undefined) => Draft;
  readonly currencyOf?: (draft: Draft) => string;
}

/** What a person can do to a whole table. */
export interface TableActions {
  readonly paste: (cell: { readonly row: number; readonly name: string }, text: string) => void;
  readonly open: (file: Blob) => void;
  readonly save: () => void;
  readonly clear: () => void;
}

/** Filling a table from a spreadsheet or a file, saving it, emptying it; what was refused changes nothing. */
export function makeTableActions<Draft extends AnyDraft>(table: TableHandle<Draft>): TableActions {
  const { list, most } = table;
  return {
    paste: async ({ row, name }, text) => {
      const cell = { list, row, name, names: table.names() };
      const pasted = await pasteTable({ draft: table.read(), cell, text }, most, table.loadCsv);
      if (pasted.ok) table.replace('pasted', pasted.draft, pasted.rows);
      else table.refuse(pasted.fault);
    },
    open: async (file) => {
      const read = await openTable(file, table);
      if (!read.ok) return table.refuse(read.fault);
      const now = table.read();
      const unit = read.unit ?? (now['unit'] === 'cm' ? 'cm' : 'in');
      const draft = writeRows(table.sayIn(now, unit, read.currency), list, read.rows);
      table.replace('opened', draft, read.rows.length);
    },
    save: async () => {
      const draft = table.read();
      const unit = draft['unit'] === 'cm' ? 'cm' : 'in';
      const currency = table.currencyOf?.(draft);
      const measures = { unit, ...(currency !== undefined && { currency }) } as const;
      const rows = readRows(draft, list);
      const isSaved = await saveTable(
        table.file,
        { ...measures, rows, columns: table.columns },
        table.loadCsv,
      );
      if (!isSaved) table.refuse({ code: 'unreadable' });
    },
    clear: () => table.replace('cleared', writeRows(table.read(), list, []), 0),
  };
}
