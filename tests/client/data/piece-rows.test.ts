import { describe, expect, test } from 'vitest';
import { addPiece, editPiece, readPieces, writePieces } from '../../../client/data/piece-rows.ts';

const DRAFT = {
  'fabrics.0.width': '42',
  'fabrics.0.pieces.0.id': 'A',
  'fabrics.0.pieces.0.width': '8',
  'fabrics.0.pieces.1.id': 'C',
  'fabrics.0.pieces.1.width': '5',
  'fabrics.1.pieces.0.id': 'other',
} as const;

describe('piece-rows', () => {
  test('readPieces reads the kinds of the first cloth in their order', () => {
    expect(readPieces(DRAFT)).toEqual([
      { id: 'A', width: '8' },
      { id: 'C', width: '5' },
    ]);
    const many = Object.fromEntries(
      Array.from({ length: 12 }, (_, at) => [`fabrics.0.pieces.${11 - at}.id`, `${11 - at}`]),
    );
    expect(readPieces(many).map(({ id }) => id)).toEqual(
      Array.from({ length: 12 }, (_, at) => `${at}`),
    );
  });

  test('writePieces numbers what is left anew and touches nothing else', () => {
    expect(writePieces(DRAFT, readPieces(DRAFT).slice(1))).toEqual({
      'fabrics.0.width': '42',
      'fabrics.0.pieces.0.id': 'C',
      'fabrics.0.pieces.0.width': '5',
      'fabrics.1.pieces.0.id': 'other',
    });
    expect(writePieces(DRAFT, readPieces(DRAFT))).toEqual(DRAFT);
  });

  test('addPiece takes the size of the last kind and a letter that is free', () => {
    expect(readPieces(addPiece(DRAFT)).at(-1)).toEqual({ id: 'B', width: '5', count: '1' });
  });

  test('editPiece changes one place', () => {
    expect(editPiece(DRAFT, 1, ['width', '6'])).toEqual({
      ...DRAFT,
      'fabrics.0.pieces.1.width': '6',
    });
  });
});
