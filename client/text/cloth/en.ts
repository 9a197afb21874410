import type { Role } from '#core/contract.ts';
import { makeCount } from '../make-count.ts';

const count = makeCount('en');

/** What tables of cloth say, of whatever page they are on, in English. */
export const en = {
  language: 'en',
  columns: {
    role: 'For',
    id: 'Name',
    print: 'Print',
    width: 'Width',
    length: 'Length',
    count: 'Pieces',
    cost: 'Cost',
  } as Readonly<Record<string, string>>,
  cell: (row: number, column: string) => `Row ${row}, ${column.toLowerCase()}`,
  remove: (name: string) => `Take ${name} away`,
  row: (row: number) => `row ${row}`,
  prints: 'Several pieces show one print',
  printsHint: 'Give pieces of one print the same word under “Print”.',
  paste: 'Paste from a spreadsheet at any cell. A file has a column each for',
  /** As short as a cell of the table wants it. */
  roles: { top: 'Top', middle: 'Middle', backing: 'Backing' } as Readonly<Record<Role, string>>,
  noNames: 'Give it a name of its own.',
  noRole: 'Choose top, middle or backing.',
  open: 'Open CSV',
  save: 'Save CSV',
  clear: 'Start with an empty table',
  /** The same as the end of `invented`. */
  clearInvented: 'start with an empty table',
  undo: 'Put back what was there',
  opened: (rows: number) => `${count(rows, 'row', 'rows')} read from the file.`,
  pasted: (rows: number) => `${count(rows, 'row', 'rows')} pasted.`,
  cleared: 'The table is empty.',
  invented: 'This cloth is from a shop that does not exist. Type over it, or',
  file: {
    'empty-file': () =>
      'There is no cloth in that file. The first row names the columns, the others a cloth each.',
    'no-column': ({ column = '' }) =>
      `Row 1 names no column “${column}”. Put that word above the column and open the file again.`,
    'stray-quote': ({ row = 0 }) =>
      `Row ${row} has a quotation mark astray. Put the cell in quotation marks and write each one inside it twice.`,
    'too-many-rows': ({ row = 0, most = 0 }) =>
      `The table takes ${most} rows, and row ${row} is one too many. Nothing was taken over; split the list.`,
    unreadable: () => 'That file cannot be read. Save it as CSV and open it again.',
  } as Readonly<
    Record<
      'empty-file' | 'no-column' | 'stray-quote' | 'too-many-rows' | 'unreadable',
      (fault: { readonly row?: number; readonly column?: string; readonly most?: number }) => string
    >
  >,
  kept: 'What you typed stays as it is.',
  cuts: {
    across: (width: string) => `${width} across`,
    wanted: (count: number) => `${count} wanted`,
    turned: 'dashed: turned a quarter',
    alike: (sheets: number) => `${sheets} alike`,
  },
};
