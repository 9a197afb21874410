import { fitsAcross } from '../cloth/strips/fits-across.ts';
import type { Unit, YardageInput } from '../contract.ts';
import { fromMillimetres } from '../length.ts';
import type { Path } from '../outcome.ts';
import { readFabric } from '../yardage/read-fabric.ts';
import type { Reading } from './reading.ts';

type FabricInput = YardageInput['fabrics'][number];

interface Side {
  readonly width: number;
  readonly length: number;
}

/**
 * Finds every piece that fits nothing that the fabric is sold as, one way or the other: fault
 * `roll-too-narrow`, with the greatest width there is.
 */
export function checkFit(reading: Reading, fabric: FabricInput, path: Path): void {
  const { unit } = reading;
  const { kinds, usable, rolls, sheets } = readFabric(fabric, unit);
  const cloths: readonly Side[] = [
    ...(rolls.length > 0 ? [{ width: Math.max(0, usable), length: Number.POSITIVE_INFINITY }] : []),
    ...sheets,
  ];
  const room = Math.max(...cloths.map((cloth) => cloth.width));
  for (const [at, { across, along, canTurn }] of kinds.entries()) {
    const ways = [{ width: across, length: along }];
    if (canTurn) ways.push({ width: along, length: across });
    if (ways.some((way) => cloths.some((cloth) => fits(way, cloth)))) continue;
    const narrowest = Math.min(...ways.map((way) => way.width));
    reading.faults.push({
      code: 'roll-too-narrow',
      path: [...path, 'pieces', at, 'width'],
      expected: writeSide(narrowest, unit),
      received: writeSide(room, unit),
    });
  }
}

function fits(piece: Side, cloth: Side): boolean {
  return fitsAcross(piece.width, cloth.width) && fitsAcross(piece.length, cloth.length);
}

function writeSide(millimetres: number, unit: Unit): string {
  return `${fromMillimetres(millimetres, unit)} ${unit}`;
}
