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

type Side = 'width' | 'height';
type Doubt = 'low' | 'usual' | 'high';

/**
 * Derivations of the washed size: the dimensional change each way and the sizes with their least and
 * most, each from how the layers settle along and across the cloth.
 */
export function explainShrink(explained: Explained): readonly Derivation[] {
  return [...explainSides(explained, 'width'), ...explainSides(explained, 'height')];
}

function explainSides({ input, plan, figures }: Explained, side: Side): readonly Derivation[] {
  const sewn = fromMillimetres(plan.sewn[side], input.unit, 9);
  const { change, washed } = figures.size;
  const usual = shrinkOf(input, side, 'usual');
  const size = (path: string, { formula, numbers }: Term, value: number) =>
    derive(path, SOURCES.model, [`sewn * (1 - ${formula})`, { sewn, ...numbers }, value]);
  return [
    derive(`size.change.${side}`, SOURCES.model, [
      `-100 * ${usual.formula}`,
      usual.numbers,
      change[side],
    ]),
    size(`size.washed.${side}`, usual, washed[side]),
    size(`size.washed.low.${side}`, shrinkOf(input, side, 'high'), washed.low[side]),
    size(`size.washed.high.${side}`, shrinkOf(input, side, 'low'), washed.high[side]),
  ];
}

/** The shrink of one side of the quilt: that of its direction, or the mean where blocks are turned. */
function shrinkOf(input: Explained['input'], side: Side, doubt: Doubt): Term {
  const along = explainWay(input, 'length', doubt);
  const across = explainWay(input, 'width', doubt);
  if (input.grain === 'aligned') return side === 'width' ? across : along;
  return {
    formula: `(${along.formula} + ${across.formula}) / 2`,
    numbers: { ...along.numbers, ...across.numbers },
  };
}

/** The shrink one way: the course of a washed test block, or how the layers settle. */
function explainWay(input: Explained['input'], direction: 'length' | 'width', doubt: Doubt): Term {
  const way = direction === 'length' ? 'along' : 'across';
  const sandwich = findRanges(coursesOf(input), 'sandwich')[direction]?.[doubt];
  if (sandwich === undefined) {
    const pulls = { layers: measuredLayers(input), washes: input.washes };
    return settle(layerPulls(pulls, direction, doubt), way, doubt);
  }
  const numbers = {
    [`${way}Limit`]: roundTo(sandwich.limit, 12),
    [`${way}Rate`]: roundTo(sandwich.rate, 12),
    washes: input.washes,
  };
  return { formula: `${way}Limit * (1 - ${way}Rate ** washes)`, numbers };
}

/**
 * How the layers settle, written out. The usual: every layer's rate weighed by its mass and grip, by a
 * quarter of it where the layer is pressed. The least: all weighed fully. The most: the greatest rate.
 */
function settle(layers: readonly WashLayer[], way: 'along' | 'across', doubt: Doubt): Term {
  const names = layers.map((_, index) => `${way}${index}`);
  const rates = layers.map((layer, index) => [`${way}${index}`, roundTo(layer.rate, 12)]);
  if (doubt === 'high') {
    return { formula: `max(${names.join(', ')})`, numbers: Object.fromEntries(rates) };
  }
  const rest = settleSandwich(layers, doubt === 'low' ? 1 : BUCKLING);
  const weights = layers.map((layer, index) => {
    const isPressed = doubt === 'usual' && layer.rate < rest;
    return [`${way}Pull${index}`, roundTo(layer.weight * (isPressed ? BUCKLING : 1), 9)];
  });
  const terms = names.map((name, index) => `${way}Pull${index} * ${name}`).join(' + ');
  const sum = names.map((_, index) => `${way}Pull${index}`).join(' + ');
  const numbers = Object.fromEntries([...rates, ...weights]);
  return { formula: `(${terms}) / (${sum})`, numbers };
}
