import { countFitting } from '../block/count-whole.ts';
import { faceOf } from '../block/size-block.ts';
import { usableWidth } from '../cloth/usable-width.ts';
import type { LayerInput, PlanInput } from '../contract.ts';
import { roundTo, toMillimetres } from '../length.ts';
import type { Path } from '../outcome.ts';
import { prewashRates } from '../wash/prewash-rates.ts';
import type { Reading } from './reading.ts';

/**
 * Checks the block against its seam, its snips and every roll it is cut from.
 * Faults: `seam-eats-face` (c − 2s must be above 0), `snips-reach-stitching` (depth must be below
 * the allowance), `roll-too-narrow` (a piece must fit across the usable width).
 * Cut sizes that nobody asked for by name are passed over in silence while one of them will do.
 */
export function checkBlock(reading: Reading, input: PlanInput, cutsGiven: boolean): void {
  const { block, unit } = input;
  if (block.snipDepth >= block.seam) {
    reading.faults.push({
      code: 'snips-reach-stitching',
      path: ['block', 'snipDepth'],
      expected: `${block.seam} ${unit}`,
      received: `${block.snipDepth} ${unit}`,
    });
  }
  if (block.cut !== undefined) {
    checkCut(reading, input, { cut: block.cut, path: ['block', 'seam'] });
    return;
  }
  const cuts = cutsGiven ? input.cuts : input.cuts.slice(-1);
  const smallest = usableCuts(input)[0];
  if (smallest !== undefined && !cutsGiven) return;
  for (const [index, cut] of cuts.entries()) {
    checkCut(reading, input, { cut, path: cutsGiven ? ['cuts', index] : ['block', 'seam'] });
  }
}

/**
 * The cut sizes, in the unit of the request, that leave a face and fit every roll.
 */
export function usableCuts(input: PlanInput): readonly number[] {
  return input.cuts.filter((cut) => isUsable(input, cut));
}

function isUsable(input: PlanInput, cut: number): boolean {
  return (
    hasFace(cut, input.block.seam) &&
    input.layers.every((layer) =>
      narrowest(layer).every((roll) => fits(input, roll.width, cut, layer)),
    )
  );
}

function hasFace(cut: number, seam: number): boolean {
  return faceOf({ cut, seam }) > 1e-9;
}

/** Each width that the pieces of a layer are cut from, with the place where it was given. */
function narrowest(layer: LayerInput): readonly { readonly width: number; readonly at: Path }[] {
  return layer.prints.map((print, index) => ({
    width: print.width,
    at: print.width === layer.width ? ['width'] : ['prints', index, 'width'],
  }));
}

function usableOf(input: PlanInput, width: number, layer: LayerInput): number {
  return usableWidth({
    width: toMillimetres(width, input.unit),
    selvage: toMillimetres(layer.selvage, input.unit),
    prewash: prewashRates(layer),
  });
}

function fits(input: PlanInput, width: number, cut: number, layer: LayerInput): boolean {
  return countFitting(usableOf(input, width, layer), toMillimetres(cut, input.unit)) > 0;
}

function checkCut(
  reading: Reading,
  input: PlanInput,
  asked: { readonly cut: number; readonly path: Path },
): void {
  const { unit, block } = input;
  const text = (value: number) => `${roundTo(value, 4)} ${unit}`;
  if (!hasFace(asked.cut, block.seam)) {
    reading.faults.push({
      code: 'seam-eats-face',
      path: asked.path,
      expected: text(asked.cut / 2),
      received: text(block.seam),
    });
    return;
  }
  const seen = new Set<string>();
  for (const [index, layer] of input.layers.entries()) {
    for (const roll of narrowest(layer)) {
      const path = ['layers', index, ...roll.at];
      if (fits(input, roll.width, asked.cut, layer) || seen.has(path.join())) continue;
      seen.add(path.join());
      reading.faults.push({
        code: 'roll-too-narrow',
        path,
        expected: text(asked.cut),
        received: text(
          Math.max(0, usableOf(input, roll.width, layer)) / (unit === 'in' ? 25.4 : 10),
        ),
      });
    }
  }
}
