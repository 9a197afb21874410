import type { AnyDraft } from '../../data/draft.ts';

export type Direction = 'length' | 'width';

/** A cell of a row: a pair of marks along the roll, one across it, and the diagonals of the square. */
export type CellName = `${Direction}.before` | `${Direction}.after` | 'ac' | 'bd';

/** One square of marks, as typed. */
export type Row = Readonly<Record<CellName, string>>;

/** The swatches of one cloth after one count of washes, as typed. */
export interface Cloth {
  readonly fabric: string;
  readonly washes: string;
  readonly rows: readonly Row[];
}

/** Where a swatch of the request stands in the table. */
export interface Place {
  readonly cloth: number;
  readonly row: number;
  readonly direction: Direction;
}

export const DIRECTIONS: readonly Direction[] = ['length', 'width'];
export const CELLS: readonly CellName[] = [
  'length.before',
  'length.after',
  'width.before',
  'width.after',
];
export const BLANK_ROW: Row = {
  'length.before': '',
  'length.after': '',
  'width.before': '',
  'width.after': '',
  ac: '',
  bd: '',
};

export const BLANK_CLOTH: Cloth = { fabric: 'quilting-cotton', washes: '1', rows: [] };

/** Types into one cell; a row that was not there yet is grown. */
export function typeCell(
  cloth: Cloth,
  { row, name }: { readonly row: number; readonly name: CellName },
  typed: string,
): Cloth {
  const rows = [...cloth.rows];
  rows[row] = { ...(rows[row] ?? BLANK_ROW), [name]: typed };
  return { ...cloth, rows };
}

/** The places of all swatches whose both ends were measured, in the order in which they are asked for. */
export function listPlaces(cloths: readonly Cloth[]): readonly Place[] {
  return cloths.flatMap(({ rows }, cloth) =>
    DIRECTIONS.flatMap((direction) =>
      rows.flatMap((row, index) =>
        countEnds(row, direction) === 2 ? [{ cloth, row: index, direction }] : [],
      ),
    ),
  );
}

/** Whether some pair of marks was measured at one end of the wash only: it waits for the other. */
export function hasHalfPair(cloths: readonly Cloth[]): boolean {
  return cloths.some(({ rows }) =>
    rows.some((row) => DIRECTIONS.some((direction) => countEnds(row, direction) === 1)),
  );
}

function countEnds(row: Row, direction: Direction): number {
  return (['before', 'after'] as const).filter((end) => row[`${direction}.${end}`].trim() !== '')
    .length;
}

/**
 * The swatches at some places as the flat query of the API has them. Diagonals go with the first pair of their row.
 *
 * @param places all of the table, or those of `listPlaces`.
 */
export function writeSwatches(cloths: readonly Cloth[], places: readonly Place[]): AnyDraft {
  const entries = places.flatMap((place, index) => {
    const { fabric = '', washes = '', rows = [] } = cloths[place.cloth] ?? {};
    const row = rows[place.row] ?? BLANK_ROW;
    const isFirst =
      place.direction === 'length' || !places.some((other) => isPair(other, place, 'length'));
    const fields: readonly (readonly [string, string])[] = [
      ['fabric', fabric.trim()],
      ['direction', place.direction],
      ['before', row[`${place.direction}.before`]],
      ['after', row[`${place.direction}.after`]],
      ['washes', washes.trim()],
      ['diagonals.ac', isFirst ? row.ac : ''],
      ['diagonals.bd', isFirst ? row.bd : ''],
    ];
    return fields
      .filter(([, typed]) => typed !== '')
      .map(([name, typed]) => [`swatches.${index}.${name}`, typed] as const);
  });
  return Object.fromEntries(entries);
}

function isPair(other: Place, { cloth, row }: Place, direction: Direction): boolean {
  return other.cloth === cloth && other.row === row && other.direction === direction;
}

/**
 * Reads a table out of a flat query: swatches of one cloth and wash count together, each row a pair along and a pair
 * across, in the order in which they stand.
 */
export function readCloths(draft: AnyDraft): readonly Cloth[] {
  const cloths: { fabric: string; washes: string; rows: Row[] }[] = [];
  for (const index of listIndexes(draft)) {
    const at = (name: string) => draft[`swatches.${index}.${name}`] ?? '';
    const [fabric, washes] = [at('fabric') || 'cloth', at('washes') || '1'];
    const direction = at('direction') === 'width' ? 'width' : 'length';
    let cloth = cloths.find((one) => one.fabric === fabric && one.washes === washes);
    if (cloth === undefined) {
      cloth = { fabric, washes, rows: [] };
      cloths.push(cloth);
    }
    const free = cloth.rows.findIndex((row) => countEnds(row, direction) === 0);
    const place = free < 0 ? cloth.rows.length : free;
    const row = cloth.rows[place] ?? BLANK_ROW;
    cloth.rows[place] = {
      ...row,
      [`${direction}.before`]: at('before'),
      [`${direction}.after`]: at('after'),
      ac: row.ac || at('diagonals.ac'),
      bd: row.bd || at('diagonals.bd'),
    };
  }
  return cloths;
}

function listIndexes(draft: AnyDraft): readonly number[] {
  const found = Object.keys(draft).flatMap((path) => {
    const index = /^swatches\.(\d{1,3})\./.exec(path)?.[1];
    return index === undefined ? [] : [Number(index)];
  });
  return [...new Set(found)].toSorted((one, other) => one - other);
}

/** The cell at which a fault of the request stands: its row and name; nothing where it is of no cell. */
export function findCell(
  path: readonly (string | number)[],
  places: readonly Place[],
): { readonly cloth: number; readonly row: number; readonly name: string } | undefined {
  const [group, index, part, inner] = path;
  const place = group === 'swatches' ? places[Number(index)] : undefined;
  if (place === undefined) return undefined;
  const isDirected = part === 'before' || part === 'after';
  const name = isDirected ? `${place.direction}.${part}` : `${inner ?? part ?? ''}`;
  return { cloth: place.cloth, row: place.row, name };
}
