import type { ClothOfferInput, PlanInput } from '../contract.ts';
import { toMillimetres } from '../length.ts';
import { prewashRates } from '../wash/prewash-rates.ts';
import { measuredLayers } from '../wash/shrink-plan.ts';

/** Flat pieces as they are when they are cut, mm. */
export interface OfferedPiece {
  /** Place among the offers of the layer. */
  readonly at: number;
  readonly offer: Extract<ClothOfferInput, { kind: 'pieces' }>;
  readonly width: number;
  readonly length: number;
  /** What a prewash takes, fractions. */
  readonly prewash: { readonly width: number; readonly length: number };
}

type Layers = Pick<PlanInput, 'unit' | 'layers' | 'swatches'>;

/**
 * The flat pieces that each layer is sold as, after a prewash, in the order of the layers; nothing at all
 * where no layer has offers.
 */
export function listOfferedPieces(input: Layers): readonly (readonly OfferedPiece[])[] {
  if (input.layers.every(({ offers }) => offers === undefined)) return [];
  const prewashes = measuredLayers(input).map(prewashRates);
  return input.layers.map(({ offers = [] }, index) => {
    const prewash = prewashes[index] ?? { length: 0, width: 0 };
    const mm = (value: number) => toMillimetres(value, input.unit);
    return offers.flatMap((offer, at) =>
      offer.kind === 'roll'
        ? []
        : [
            {
              at,
              offer,
              width: mm(offer.width) * (1 - prewash.width),
              length: mm(offer.length) * (1 - prewash.length),
              prewash,
            },
          ],
    );
  });
}

/**
 * The largest square that every layer can be cut in from its flat pieces.
 *
 * @returns mm; infinite where each layer comes off a roll too
 */
export function largestOffered(input: Layers): number {
  const squares = listOfferedPieces(input).map((pieces, index) =>
    hasRoll(input.layers[index]) ? Number.POSITIVE_INFINITY : Math.max(...pieces.map(squareOf)),
  );
  return Math.min(Number.POSITIVE_INFINITY, ...squares);
}

function hasRoll(layer: PlanInput['layers'][number] | undefined): boolean {
  return layer?.offers?.some(({ kind }) => kind === 'roll') ?? true;
}

function squareOf({ width, length }: OfferedPiece): number {
  return Math.min(width, length);
}
