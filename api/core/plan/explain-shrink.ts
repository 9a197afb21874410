import type { Extent } from '../block/size-quilt.ts';
import type { Derivation } from '../contract.ts';
import { fromMillimetres, roundTo } from '../length.ts';
import { SOURCES } from '../sources.ts';
import { BUCKLING } from '../tables/defaults.ts';
import { settleSandwich, type WashLayer } from '../wash/settle-sandwich.ts';
import { layerPulls } from '../wash/shrink-quilt.ts';
import type { Explained } from './explained.ts';

/**
 * Derivations of the washed size: the rest point of the sandwich along and across the cloth, the
 * dimensional change each way, and the sizes with their least and most.
 */
export function explainShrink({ input, plan, figures }: Explained): readonly Derivation[] {
  const along = settled(layerPulls(input, 'length'));
  const across = settled(layerPulls(input, 'width'));
  const { change, washed } = figures.size;
  const isAligned = input.grain === 'aligned';
  const mean = '-100 * (along + across) / 2';
  const model = SOURCES.model;
  const numbers = { along: along.value, across: across.value };
  const inUnit = (value: number) => fromMillimetres(value, input.unit, 9);
  const size = (side: 'width' | 'height'): readonly Derivation[] => {
    const sewn = inUnit(plan.sewn[side]);
    const after = (path: string, extent: Extent, value: number): Derivation => ({
      path,
      formula: 'sewn * (1 - shrink)',
      numbers: { sewn, shrink: roundTo(1 - extent[side] / plan.sewn[side], 12) },
      value,
      source: SOURCES.change,
    });
    return [
      after(`size.washed.${side}`, plan.washed, washed[side]),
      after(`size.washed.low.${side}`, plan.low, washed.low[side]),
      after(`size.washed.high.${side}`, plan.high, washed.high[side]),
    ];
  };
  return [
    { path: 'settled.along', ...along, source: model },
    { path: 'settled.across', ...across, source: model },
    {
      path: 'size.change.width',
      formula: isAligned ? '-100 * across' : mean,
      numbers: isAligned ? { across: across.value } : numbers,
      value: change.width,
      source: model,
    },
    {
      path: 'size.change.height',
      formula: isAligned ? '-100 * along' : mean,
      numbers: isAligned ? { along: along.value } : numbers,
      value: change.height,
      source: model,
    },
    ...size('width'),
    ...size('height'),
  ];
}

/**
 * The rest point written out: every layer's rate weighed by its mass and grip, by a quarter of it
 * where the layer is pressed.
 */
function settled(layers: readonly WashLayer[]): Pick<Derivation, 'formula' | 'numbers' | 'value'> {
  const rest = settleSandwich(layers);
  const numbers: Record<string, number> = {};
  for (const [index, layer] of layers.entries()) {
    const isPressed = layer.rate < rest;
    numbers[`k${index}`] = roundTo(layer.rate, 12);
    numbers[`w${index}`] = roundTo(layer.weight * (isPressed ? BUCKLING : 1), 9);
  }
  const terms = layers.map((_, index) => `w${index} * k${index}`).join(' + ');
  const weights = layers.map((_, index) => `w${index}`).join(' + ');
  return { formula: `(${terms}) / (${weights})`, numbers, value: roundTo(rest, 12) };
}
