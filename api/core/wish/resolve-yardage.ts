import type { RollFabric, RollPiece, YardageInput, YardageRequest } from '../contract.ts';
import { roundTo } from '../length.ts';
import { NUMBER_LIMITS } from '../limits.ts';
import { fail, type Outcome, type Path, succeed } from '../outcome.ts';
import { DEFAULTS } from '../tables/defaults.ts';
import { checkFit } from './check-fit.ts';
import { checkIds } from './check-ids.ts';
import {
  isSound,
  keep,
  type Reading,
  type Resolved,
  readLengthField,
  readPlain,
  startReading,
  writeQuery,
} from './reading.ts';
import { resolveOffers } from './resolve-offers.ts';

type FabricInput = YardageInput['fabrics'][number];
type PieceInput = FabricInput['pieces'][number];

/**
 * Understands a wish for yardage: lengths, defaults, names, offers, and whether every piece fits what
 * its fabric is sold as. Shape and ranges of plain numbers were checked before.
 *
 * @returns as `resolvePlan` does
 */
export function resolveYardage(request: YardageRequest): Outcome<Resolved<YardageInput>> {
  const reading = startReading(request.unit);
  const fabrics = request.fabrics.map((fabric, index) =>
    resolveFabric(reading, fabric, ['fabrics', index]),
  );
  checkIds(reading, request.fabrics, ['fabrics']);
  for (const [index, fabric] of fabrics.entries()) {
    checkCount(reading, fabric, index);
    if (isSound(reading, ['fabrics', index])) checkFit(reading, fabric, ['fabrics', index]);
  }
  if (reading.faults.length > 0) return fail(reading.faults);
  return succeed({
    input: { unit: reading.unit, fabrics },
    assumptions: reading.assumptions,
    query: writeQuery(reading.kept),
  });
}

function resolveFabric(reading: Reading, fabric: RollFabric, path: Path): FabricInput {
  const defaults = DEFAULTS[reading.unit];
  keep(reading, [...path, 'id'], fabric.id);
  const width = readLengthField(reading, {
    path: [...path, 'width'],
    given: fabric.width,
    limit: 'rollWidth',
  });
  const selvage = readLengthField(reading, {
    path: [...path, 'selvage'],
    given: fabric.selvage,
    limit: 'selvage',
    fallback: defaults.selvage,
    why: `Cut away at each edge of ${fabric.id}`,
  });
  const prewash = resolvePrewash(reading, fabric, path);
  const squaring = readLengthField(reading, {
    path: [...path, 'squaring'],
    given: fabric.squaring,
    limit: 'squaring',
    fallback: defaults.squaring,
    why: `Spent on a straight edge of ${fabric.id}`,
  });
  const step = readLengthField(reading, {
    path: [...path, 'step'],
    given: fabric.step,
    limit: 'rollStep',
    fallback: defaults.step,
    why: 'Shops sell by this step',
  });
  const left =
    fabric.lengthLeft === undefined
      ? {}
      : {
          lengthLeft: readLengthField(reading, {
            path: [...path, 'lengthLeft'],
            given: fabric.lengthLeft,
            limit: 'lengthLeft',
          }),
        };
  const offers = fabric.offers && {
    offers: resolveOffers(reading, { offers: fabric.offers, step }, [...path, 'offers']),
  };
  const pieces = fabric.pieces.map((piece, index) =>
    resolvePiece(reading, piece, [...path, 'pieces', index]),
  );
  checkIds(reading, fabric.pieces, [...path, 'pieces']);
  return { id: fabric.id, width, selvage, prewash, squaring, step, ...left, ...offers, pieces };
}

function resolvePrewash(reading: Reading, fabric: RollFabric, path: Path): FabricInput['prewash'] {
  const { length = 0, width = 0 } = fabric.prewash ?? {};
  const rates = { length: roundTo(length, 9), width: roundTo(width, 9) };
  if (rates.length !== 0 || rates.width !== 0) {
    keep(reading, [...path, 'prewash', 'length'], rates.length);
    keep(reading, [...path, 'prewash', 'width'], rates.width);
  }
  return rates;
}

function resolvePiece(reading: Reading, piece: RollPiece, path: Path): PieceInput {
  keep(reading, [...path, 'id'], piece.id);
  const side = (name: 'width' | 'length') =>
    readLengthField(reading, { path: [...path, name], given: piece[name], limit: 'pieceSide' });
  const width = side('width');
  const length = side('length');
  keep(reading, [...path, 'count'], piece.count);
  const directional = readPlain(reading, {
    path: [...path, 'directional'],
    given: piece.directional,
    fallback: false,
    why: `Pieces of ${piece.id} may be turned`,
  });
  return { id: piece.id, width, length, count: piece.count, directional };
}

/** Pieces of all sizes together must be as few as those of one size may be. */
function checkCount(reading: Reading, { pieces }: FabricInput, index: number): void {
  const { most } = NUMBER_LIMITS.pieceCount;
  const sum = pieces.reduce((total, piece) => total + piece.count, 0);
  if (sum <= most) return;
  const path = ['fabrics', index, 'pieces'];
  reading.faults.push({ code: 'too-large', path, expected: `${most} pieces`, received: sum });
}
