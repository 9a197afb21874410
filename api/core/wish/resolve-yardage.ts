import { countFitting } from '../block/count-whole.ts';
import { usableWidth } from '../cloth/usable-width.ts';
import type { RollFabric, RollPiece, YardageInput, YardageRequest } from '../contract.ts';
import { roundTo, toMillimetres } from '../length.ts';
import { fail, type Outcome, type Path, succeed } from '../outcome.ts';
import { DEFAULTS } from '../tables/defaults.ts';
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

type FabricInput = YardageInput['fabrics'][number];
type PieceInput = FabricInput['pieces'][number];

/**
 * Understands a wish for yardage: lengths, defaults, names, and whether every piece fits its roll.
 * Shape and ranges of plain numbers were checked before.
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
    if (isSound(reading, ['fabrics', index])) checkFit(reading, fabric, index);
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
  const pieces = fabric.pieces.map((piece, index) =>
    resolvePiece(reading, piece, [...path, 'pieces', index]),
  );
  checkIds(reading, fabric.pieces, [...path, 'pieces']);
  return { id: fabric.id, width, selvage, prewash, squaring, step, ...left, pieces };
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

function checkIds(reading: Reading, named: readonly { readonly id: string }[], path: Path): void {
  for (const [index, { id }] of named.entries()) {
    if (named.findIndex((other) => other.id === id) === index) continue;
    reading.faults.push({ code: 'repeated-id', path: [...path, index, 'id'], received: id });
  }
}

function checkFit(reading: Reading, fabric: FabricInput, index: number): void {
  const mm = (value: number) => toMillimetres(value, reading.unit);
  const usable = usableWidth({
    width: mm(fabric.width),
    selvage: mm(fabric.selvage),
    prewash: { length: fabric.prewash.length / 100, width: fabric.prewash.width / 100 },
  });
  for (const [at, piece] of fabric.pieces.entries()) {
    const sides = piece.directional ? [piece.width] : [piece.width, piece.length];
    if (usable > 0 && sides.some((side) => countFitting(usable, mm(side)) > 0)) continue;
    const room = roundTo(Math.max(0, usable) / mm(1), 4);
    reading.faults.push({
      code: 'roll-too-narrow',
      path: ['fabrics', index, 'pieces', at, 'width'],
      expected: `${Math.min(...sides)} ${reading.unit}`,
      received: `${room} ${reading.unit}`,
    });
  }
}
