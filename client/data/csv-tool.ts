import Papa from 'papaparse';

/** What reads and writes tables as text; fetched only when a table is opened, saved or pasted. */
export interface CsvTool {
  readonly readCells: typeof readCells;
  readonly writeCells: typeof writeCells;
}

/** The cells of a text, or the row, counted from 1, at which a quote is astray. */
export type ReadCells =
  | { readonly ok: true; readonly cells: readonly (readonly string[])[] }
  | { readonly ok: false; readonly row: number };

/** What a spreadsheet would take for a formula at the start of a cell. */
const FORMULA = /^'*[=+\-@\t\r]/;
const HARMLESS = /^'+[=+\-@\t\r]/;

/**
 * Reads comma-separated values (RFC 4180), or those of another delimiter. Empty lines are passed over; an apostrophe
 * that keeps a cell from being a formula is taken off again.
 *
 * @param most rows that are read at all, so that a text without end is no work without end.
 */
export function readCells(
  text: string,
  { delimiter = '', most }: { readonly delimiter?: string; readonly most: number },
): ReadCells {
  const { data, errors } = Papa.parse<string[]>(text.replace(/^\uFEFF/, ''), {
    ...{ delimiter, preview: most, skipEmptyLines: 'greedy' },
    delimitersToGuess: [',', ';', '\t'],
  });
  const astray = errors.find(({ type }) => type === 'Quotes');
  if (astray !== undefined) return { ok: false, row: (astray.row ?? 0) + 1 };
  return {
    ok: true,
    cells: data.map((row) => row.map((cell) => (HARMLESS.test(cell) ? cell.slice(1) : cell))),
  };
}

/** As RFC 4180 ends a line; no part of a template, where a build takes line ends for indentation. */
const LINE_END = '\r\n';

/** Writes cells as comma-separated values (RFC 4180), each that a spreadsheet would run made harmless by an apostrophe. */
export function writeCells(cells: readonly (readonly string[])[]): string {
  const safe = cells.map((row) => row.map((cell) => (FORMULA.test(cell) ? `'${cell}` : cell)));
  return [Papa.unparse(safe, { newline: LINE_END }), ''].join(LINE_END);
}
