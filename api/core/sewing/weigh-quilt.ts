import { RETAINED_WATER } from '../tables/defaults.ts';

export interface QuiltWeight {
  /** Grams. */
  readonly dry: number;
  /** Grams, after the spin. */
  readonly wet: number;
  /** Drum volume in litres that the dry quilt asks for. */
  readonly drumLitres: number;
  readonly machine: 'household' | 'large' | 'laundry';
}

/**
 * What a quilt weighs and which machine washes it.
 *
 * Dry mass N·c²·Σ gsm; wet mass dry·(1 + water held), with half the dry mass held after a household
 * spin (the middle of EU spin class B for cotton). A cotton load takes 10 L of drum for each
 * kilogram, the cautious rule; household drums hold about 60 L and large ones about 100 L
 * (common practice, no source).
 *
 * @param cut side as cut, mm
 * @param gsm mass of all layers together, g/m²
 *
 * @example
 * weighQuilt({ blocks: 100, cut: 100, gsm: 300 }) // => { dry: 300, wet: 450, drumLitres: 3, machine: 'household' }
 */
export function weighQuilt(quilt: {
  readonly blocks: number;
  readonly cut: number;
  readonly gsm: number;
}): QuiltWeight {
  const dry = (quilt.blocks * quilt.cut ** 2 * quilt.gsm) / 1e6;
  const drumLitres = Number((dry / 100).toPrecision(12));
  const machine = drumLitres <= 60 ? 'household' : drumLitres <= 100 ? 'large' : 'laundry';
  return { dry, wet: dry * (1 + RETAINED_WATER), drumLitres, machine };
}
