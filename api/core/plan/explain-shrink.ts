import type { Extent } from '../block/size-quilt.ts';
import type { Derivation } from '../contract.ts';
import { fromMillimetres, roundTo } from '../length.ts';
import { SOURCES } from '../sources.ts';
import { BUCKLING } from '../tables/defaults.ts';
import { settleSandwich, type WashLayer } from '../wash/settle-sandwich.ts';
import { coursesOf, measuredLayers } from '../wash/shrink-plan.ts';
import { layerPulls } from '../wash/shrink-quilt.ts';
import { findRanges } from '../wash/shrink-sandwich.ts';
import { derive, type Numbers } from './derive.ts';
import type { Explained } from './explained.ts';

/** A piece of arithmetic with the numbers that it names. */
interface Term {
  readonly formula: string;
  readonly numbers: Numbers;
}

/**
 * Derivations of the washed size: the dimensional change each way from the rest points of the sandwich
 * along and across the cloth, and the sizes with their least and most.
 */
export function explainShrink(explained: Explained): readonly Derivation[] {
  return [
    ...explainChange(explained),
    ...explainSides(explained, 'width'),
    ...explainSides(explained, 'height'),
  ];
}

function explainChange({ input, figures }: Explained): readonly Derivation[] {
  const along = explainWay(input, 'length', 'along');
  const across = explainWay(input, 'width', 'across');
  const { change } = figures.size;
  const say = (side: 'width' | 'height', own: Term) => {
    const { formula, numbers } =
      input.grain === 'aligned'
        ? own
        : {
            formula: `(${along.formula} + ${across.formula}) / 2`,
            numbers: { ...along.numbers, ...across.numbers },
          };
    return derive(`size.change.${side}`, SOURCES.model, [
      `-100 * ${formula}`,
      numbers,
      change[side],
    ]);
  };
  return [say('width', across), say('height', along)];
}

/** The shrink one way: the course of a washed test block, or the rest point of the layers. */
function explainWay(
  input: Explained['input'],
  direction: 'length' | 'width',
  way: 'along' | 'across',
): Term {
  const sandwich = findRanges(coursesOf(input), 'sandwich')[direction]?.usual;
  if (sandwich === undefined) {
    const layers = measuredLayers(input);
    return settle(layerPulls({ layers, washes: input.washes }, direction), way);
  }
  const numbers = {
    [`${way}Limit`]: roundTo(sandwich.limit, 12),
    [`${way}Rate`]: roundTo(sandwich.rate, 12),
    washes: input.washes,
  };
  return { formula: `${way}Limit * (1 - ${way}Rate ** washes)`, numbers };
}

function explainSides(
  { input, plan, figures }: Explained,
  side: 'width' | 'height',
): readonly Derivation[] {
  const sewn = fromMillimetres(plan.sewn[side], input.unit, 9);
  const { washed } = figures.size;
  const after = (path: string, extent: Extent, value: number) =>
    derive(path, SOURCES.change, [
      'sewn * (1 - shrink)',
      { sewn, shrink: roundTo(1 - extent[side] / plan.sewn[side], 12) },
      value,
    ]);
  return [
    after(`size.washed.${side}`, plan.washed, washed[side]),
    after(`size.washed.low.${side}`, plan.low, washed.low[side]),
    after(`size.washed.high.${side}`, plan.high, washed.high[side]),
  ];
}

/**
 * The rest point written out: every layer's rate weighed by its mass and grip, by a quarter of it
 * where the layer is pressed.
 */
function settle(layers: readonly WashLayer[], way: 'along' | 'across'): Term {
  const rest = settleSandwich(layers);
  const numbers: Record<string, number> = {};
  for (const [index, layer] of layers.entries()) {
    const isPressed = layer.rate < rest;
    numbers[`${way}${index}`] = roundTo(layer.rate, 12);
    numbers[`${way}Pull${index}`] = roundTo(layer.weight * (isPressed ? BUCKLING : 1), 9);
  }
  const terms = layers.map((_, index) => `${way}Pull${index} * ${way}${index}`).join(' + ');
  const weights = layers.map((_, index) => `${way}Pull${index}`).join(' + ');
  return { formula: `(${terms}) / (${weights})`, numbers };
}
