import { countFitting } from '../block/count-whole.ts';
import { faceOf } from '../block/size-block.ts';
import { fitsAcross } from '../cloth/strips/fits-across.ts';
import { type Roll, usableWidth } from '../cloth/usable-width.ts';
import type { LayerInput, PlanInput } from '../contract.ts';
import { MILLIMETRES, roundTo, toMillimetres } from '../length.ts';
import type { Path } from '../outcome.ts';
import { prewashRates } from '../wash/prewash-rates.ts';
import { measuredLayers } from '../wash/shrink-plan.ts';
import { largestOffered } from './largest-offered.ts';
import { isSound, type Reading } from './reading.ts';

/** A cut size that has to do: where it was given, and where to say so when the seam eats it. */
interface AskedCut {
  readonly cut: number;
  readonly at: Path;
  readonly path: Path;
}

/**
 * Checks the block against its seam, its snips and every roll it is cut from, as far as nothing was
 * wrong with them before.
 * Faults: `seam-eats-face` (c − 2s must be above 0), `snips-reach-stitching` (depth must be below
 * the allowance), `too-large` (a pitch as long as the side leaves no snip), `roll-too-narrow` (a piece must fit across the usable width).
 * Cut sizes that nobody asked for by name are passed over in silence while one of them will do.
 *
 * @param places where each of `input.cuts` stood in the request; absent for the usual ones
 */
export function checkBlock(
  reading: Reading,
  input: PlanInput,
  places: readonly number[] | undefined,
): void {
  checkSnips(reading, input);
  const prewashes = measuredLayers(input).map(prewashRates);
  for (const asked of listAsked(input, places)) {
    if (!isSound(reading, asked.at, ['block', 'seam'])) continue;
    if (hasFace(asked.cut, input.block.seam))
      checkRolls(reading, input, { cut: asked.cut, prewashes });
    else reportFace(reading, { ...asked, seam: input.block.seam });
  }
}

function listAsked(input: PlanInput, places: readonly number[] | undefined): readonly AskedCut[] {
  const seam = ['block', 'seam'];
  if (input.block.cut !== undefined) {
    return [{ cut: input.block.cut, at: ['block', 'cut'], path: seam }];
  }
  if (places === undefined) {
    const largest = usableCuts(input).length > 0 ? [] : input.cuts.slice(-1);
    return largest.map((cut) => ({ cut, at: ['cuts'], path: seam }));
  }
  return input.cuts.map((cut, index) => {
    const path = ['cuts', places[index] ?? index];
    return { cut, at: path, path };
  });
}

function checkSnips(reading: Reading, input: PlanInput): void {
  const { block, unit } = input;
  const smallest = block.cut ?? input.cuts[0] ?? 0;
  const isRead = isSound(reading, ['block', 'snipPitch'], ['block', 'cut'], ['cuts']);
  if (isRead && block.snipPitch >= smallest) {
    reading.faults.push({
      code: 'too-large',
      path: ['block', 'snipPitch'],
      expected: `${roundTo(smallest, 4)} ${unit}`,
      received: `${block.snipPitch} ${unit}`,
    });
  }
  if (block.snipDepth < block.seam) return;
  if (!isSound(reading, ['block', 'snipDepth'], ['block', 'seam'])) return;
  reading.faults.push({
    code: 'snips-reach-stitching',
    path: ['block', 'snipDepth'],
    expected: `${block.seam} ${unit}`,
    received: `${block.snipDepth} ${unit}`,
  });
}

/**
 * The cut sizes, in the unit of the request, that leave a face, fit every roll, and fit something of
 * what each layer is sold as.
 */
export function usableCuts(input: PlanInput): readonly number[] {
  const prewashes = measuredLayers(input).map(prewashRates);
  const narrowest = Math.min(
    ...input.layers.flatMap((layer, index) =>
      distinct(layer.prints.map((print) => print.width)).map((width) =>
        usableOf(input, { layer, width, prewash: prewashes[index] ?? UNWASHED }),
      ),
    ),
  );
  const largest = largestOffered(input);
  return input.cuts.filter((cut) => {
    const side = toMillimetres(cut, input.unit);
    const isSold = countFitting(narrowest, side) > 0 && fitsAcross(side, largest);
    return isSold && hasFace(cut, input.block.seam);
  });
}

function distinct(values: readonly number[]): readonly number[] {
  return [...new Set(values)];
}

/**
 * Whether an allowance at both sides leaves something of a block to see.
 *
 * @example
 * hasFace(4, 2) // => false
 */
export function hasFace(cut: number, seam: number): boolean {
  return faceOf({ cut, seam }) > 1e-9;
}

/** Each width that the pieces of a layer are cut from, with the place where it was given. */
function listRolls(layer: LayerInput): readonly { readonly width: number; readonly at: Path }[] {
  return layer.prints.map((print, index) => ({
    width: print.width,
    at: print.width === layer.width ? ['width'] : ['prints', index, 'width'],
  }));
}

/** A width on the roll of one layer, and what a prewash takes from it. */
interface LayerRoll {
  readonly layer: LayerInput;
  readonly width: number;
  readonly prewash: Roll['prewash'];
}

const UNWASHED: Roll['prewash'] = { length: 0, width: 0 };

function usableOf(input: PlanInput, { layer, width, prewash }: LayerRoll): number {
  return usableWidth({
    width: toMillimetres(width, input.unit),
    selvage: toMillimetres(layer.selvage, input.unit),
    prewash,
  });
}

/**
 * Says that two seams leave nothing of a block, lengths in the unit of the request.
 */
export function reportFace(
  reading: Reading,
  { cut, seam, path }: { readonly cut: number; readonly seam: number; readonly path: Path },
): void {
  reading.faults.push({
    code: 'seam-eats-face',
    path,
    expected: `${roundTo(cut / 2, 4)} ${reading.unit}`,
    received: `${roundTo(seam, 4)} ${reading.unit}`,
  });
}

function checkRolls(
  reading: Reading,
  input: PlanInput,
  { cut, prewashes }: { readonly cut: number; readonly prewashes: readonly Roll['prewash'][] },
): void {
  const text = (value: number) => `${roundTo(value, 4)} ${input.unit}`;
  for (const [index, layer] of input.layers.entries()) {
    if (!isSound(reading, ['layers', index])) continue;
    const usable = (width: number) =>
      usableOf(input, { layer, width, prewash: prewashes[index] ?? UNWASHED });
    const narrow = listRolls(layer).filter(
      ({ width }) => countFitting(usable(width), toMillimetres(cut, input.unit)) === 0,
    );
    for (const roll of new Map(narrow.map((roll) => [roll.at.join(), roll])).values()) {
      reading.faults.push({
        code: 'roll-too-narrow',
        path: ['layers', index, ...roll.at],
        expected: text(cut),
        received: text(Math.max(0, usable(roll.width)) / MILLIMETRES[input.unit]),
      });
    }
  }
}
