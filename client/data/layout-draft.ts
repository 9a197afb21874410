import type { LayoutRequest } from '#core/contract.ts';
import { letterOf } from '#core/layout/letter-of.ts';
import type { DraftOf } from './draft.ts';
import { readRows, writeRows } from './rows.ts';

/** A layout as it is being asked for. */
export type LayoutDraft = DraftOf<LayoutRequest>;

/** What is on the table before anybody has said a word. */
const FIRST = { columns: '5', rows: '6' } as const;
const FIRST_PRINTS = 4;

/**
 * A draft that the fields can show: with a grid and with prints.
 *
 * @example
 * completeLayout({ columns: '3', rows: '3', 'prints.0.id': 'Moss', 'prints.1.id': 'Rust' }).columns // => '3'
 * completeLayout({})['prints.3.id'] // => 'D'
 */
export function completeLayout(draft: LayoutDraft): LayoutDraft {
  const whole = { ...FIRST, ...draft };
  if (readRows(draft, 'prints').length > 1) return whole;
  const names = Array.from({ length: FIRST_PRINTS }, (_, at) => ({ id: letterOf(at) }));
  return writeRows<LayoutDraft>(whole, 'prints', names);
}

/** A print more at the end, named by its letter, or the last one fewer; counts and pins are for the grid before. */
export function changePrints(draft: LayoutDraft, more: boolean): LayoutDraft {
  const rows = readRows(draft, 'prints').map(({ count: _count, ...row }) => row);
  const next = more ? [...rows, { id: letterOf(rows.length) }] : rows.slice(0, -1);
  return writePins(writeRows(draft, 'prints', next), []);
}

/**
 * The blocks that are pinned, a string a row as the API takes them; empty where none is.
 *
 * @example
 * readPins({ 'fixed.0': 'A.', 'fixed.1': '..' }) // => ['A.', '..']
 */
export function readPins(draft: LayoutDraft): readonly string[] {
  return Object.entries(draft)
    .filter(([path]) => /^fixed\.\d+$/.test(path))
    .sort(([one], [other]) => Number(one.slice(6)) - Number(other.slice(6)))
    .map(([, row = '']) => row);
}

/** A draft with these blocks pinned and no others. */
export function writePins(draft: LayoutDraft, pins: readonly string[]): LayoutDraft {
  const others = Object.entries(draft).filter(([path]) => !path.startsWith('fixed.'));
  const isNone = pins.every((row) => /^\.*$/.test(row));
  const fixed = isNone ? [] : pins.map((row, at) => [`fixed.${at}`, row] as const);
  return Object.fromEntries([...others, ...fixed]);
}

/**
 * Pins a block that lies in the grid, or lets it go.
 *
 * @param place row by row from the top left, 0 the first.
 *
 * @example
 * readPins(togglePin({}, ['AB', 'BA'], 3)) // => ['..', '.A']
 */
export function togglePin(
  draft: LayoutDraft,
  cells: readonly string[],
  place: number,
): LayoutDraft {
  const columns = cells[0]?.length ?? 1;
  const pins = readPins(draft);
  const rows = cells.map((row, down) => {
    const pinned = (pins[down] ?? '').padEnd(columns, '.').slice(0, columns);
    const across = place - down * columns;
    if (across < 0 || across >= columns) return pinned;
    const letter = pinned[across] === '.' ? row[across] : '.';
    return pinned.slice(0, across) + letter + pinned.slice(across + 1);
  });
  return writePins(draft, rows);
}

/** Whether a block is pinned. */
export function isPinned(pins: readonly string[], columns: number, place: number): boolean {
  const letter = pins[Math.floor(place / columns)]?.[place % columns] ?? '.';
  return letter !== '.';
}
