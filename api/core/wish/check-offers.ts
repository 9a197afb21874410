import { fitsAcross } from '../cloth/strips/fits-across.ts';
import type { PlanInput } from '../contract.ts';
import { fromMillimetres, toMillimetres } from '../length.ts';
import { hasFace } from './check-block.ts';
import { largestOffered, listOfferedPieces, type OfferedPiece } from './largest-offered.ts';
import { isSound, type Reading } from './reading.ts';

/**
 * Checks what the layers are sold as against the blocks, as far as nothing was wrong with either.
 * Faults: `too-small` for a side of flat pieces that give no square of the least cut size; `too-large`
 * for a cut size asked for by name that nothing on offer for some layer gives.
 *
 * @param places where each of `input.cuts` stood in the request; absent for the usual ones
 */
export function checkOffers(
  reading: Reading,
  input: PlanInput,
  places: readonly number[] | undefined,
): void {
  if (!isSound(reading, ['layers'], ['block', 'cut'], ['block', 'seam'], ['cuts'])) return;
  const cuts = input.block.cut === undefined ? input.cuts : [input.block.cut];
  const smallest = cuts.find((cut) => hasFace(cut, input.block.seam));
  if (smallest === undefined) return;
  for (const [index, pieces] of listOfferedPieces(input).entries()) {
    for (const piece of pieces) checkSides(reading, piece, { index, cut: smallest });
  }
  if (places === undefined || !isSound(reading, ['layers'])) return;
  checkCuts(reading, input, places);
}

function checkSides(
  { faults, unit }: Reading,
  piece: OfferedPiece,
  { index, cut }: { readonly index: number; readonly cut: number },
): void {
  const side = toMillimetres(cut, unit);
  for (const name of ['width', 'length'] as const) {
    if (fitsAcross(side, piece[name])) continue;
    const needed =
      Math.ceil(fromMillimetres(side / (1 - piece.prewash[name]), unit, 6) * 1e4) / 1e4;
    faults.push({
      code: 'too-small',
      path: ['layers', index, 'offers', piece.at, name],
      expected: `${needed} ${unit}`,
      received: `${piece.offer[name]} ${unit}`,
    });
  }
}

function checkCuts({ faults, unit }: Reading, input: PlanInput, places: readonly number[]): void {
  if (input.block.cut !== undefined) return;
  const largest = largestOffered(input);
  for (const [index, cut] of input.cuts.entries()) {
    if (fitsAcross(toMillimetres(cut, unit), largest)) continue;
    faults.push({
      code: 'too-large',
      path: ['cuts', places[index] ?? index],
      expected: `${Math.floor(fromMillimetres(largest, unit, 6) * 1e4) / 1e4} ${unit}`,
      received: `${cut} ${unit}`,
    });
  }
}
