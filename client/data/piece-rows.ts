import type { YardageRequest } from '#core/contract.ts';
import { type DraftOf, editDraft } from './draft.ts';

/** Pieces on rolls as they are being written. */
export type YardageDraft = DraftOf<YardageRequest>;

/** One kind of piece: what was typed, by the last part of its path. */
export type PieceRow = Readonly<Record<string, string>>;

/** The pieces of the first cloth, to which the fields belong. */
const PIECES = 'fabrics.0.pieces.';

/**
 * The kinds of piece that a draft has of its first cloth.
 *
 * @example
 * readPieces({ 'fabrics.0.pieces.0.id': 'A', 'fabrics.0.pieces.0.count': '4' }) // => [{ id: 'A', count: '4' }]
 */
export function readPieces(draft: YardageDraft): readonly PieceRow[] {
  const rows = new Map<string, Record<string, string>>();
  for (const [path, value] of Object.entries(draft)) {
    const [at = '', name = ''] = path.startsWith(PIECES)
      ? path.slice(PIECES.length).split('.')
      : [];
    if (name !== '' && value !== undefined) rows.set(at, { ...rows.get(at), [name]: value });
  }
  return [...rows].toSorted(([one], [other]) => Number(one) - Number(other)).map(([, row]) => row);
}

/** A draft with other kinds of piece; those that are left are numbered anew. */
export function writePieces(draft: YardageDraft, rows: readonly PieceRow[]): YardageDraft {
  const written = rows.flatMap((row, at) =>
    Object.entries(row).map(([name, value]) => [`${PIECES}${at}.${name}`, value]),
  );
  const bare = Object.entries(draft).filter(([path]) => !path.startsWith(PIECES));
  return Object.fromEntries([...bare, ...written]);
}

/**
 * One kind more, of the size of the last and with the first letter that is free.
 *
 * @example
 * addPiece({ 'fabrics.0.pieces.0.id': 'A', 'fabrics.0.pieces.0.width': '8' })['fabrics.0.pieces.1.id'] // => 'B'
 */
export function addPiece(draft: YardageDraft): YardageDraft {
  const rows = readPieces(draft);
  const ids = rows.map(({ id }) => id);
  const id = [...'ABCDEFGHIJKLMNOPQRSTUVWXYZ'].find((letter) => !ids.includes(letter)) ?? '';
  return writePieces(draft, [...rows, { ...rows.at(-1), id, count: '1' }]);
}

/** What was typed at one place of one kind. */
export function editPiece(
  draft: YardageDraft,
  at: number,
  [name, value]: readonly [name: 'width' | 'length' | 'count', value: string],
): YardageDraft {
  return editDraft(draft, `fabrics.0.pieces.${at}.${name}`, value);
}
