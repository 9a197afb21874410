import type { StripGroup, Unit } from '../contract.ts';
import { toMillimetres } from '../length.ts';
import { writeLength } from '../write-length.ts';
import type { CutKind } from './draw-strip.ts';
import type { DrawnRoll } from './lay-bands.ts';
import { typesetFractions } from './typeset-fractions.ts';

/** A kind of piece in millimetres; `place` gives its letter. */
export function readKind(piece: {
  readonly width: number;
  readonly length: number;
  readonly unit: Unit;
  readonly place: number;
}): CutKind {
  const [width, length] = [piece.width, piece.length].map((side) =>
    toMillimetres(side, piece.unit),
  );
  const sides = [width ?? 0, length ?? 0].map((side) => {
    return typesetFractions(writeLength(side, piece.unit)).replace(/ (in|cm)$/, '');
  });
  return {
    letter: String.fromCharCode(65 + piece.place),
    sides: sides.join(' × '),
    width: width ?? 0,
    length: length ?? 0,
  };
}

/** The strips of an answer in millimetres; pieces of no known kind are left out. */
export function readGroups(
  groups: readonly StripGroup[],
  kinds: ReadonlyMap<string, CutKind>,
  unit: Unit,
): DrawnRoll['groups'] {
  return groups.map(({ count, length, pieces }) => ({
    count,
    length: toMillimetres(length, unit),
    reads: typesetFractions(writeLength(toMillimetres(length, unit), unit)),
    pieces: pieces.flatMap(({ id, count: beside, turned }) => {
      const kind = kinds.get(id);
      return kind === undefined ? [] : [{ kind, count: beside, turned }];
    }),
  }));
}
