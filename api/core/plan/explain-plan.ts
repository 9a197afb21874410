import type { Derivation } from '../contract.ts';
import { fromMillimetres, roundTo } from '../length.ts';
import { SOURCES } from '../sources.ts';
import { DEFAULTS } from '../tables/defaults.ts';
import { findSize } from '../tables/sizes.ts';
import { derive } from './derive.ts';
import { explainClass } from './explain-class.ts';
import { explainCloth } from './explain-cloth.ts';
import { explainSewing } from './explain-sewing.ts';
import { explainShrink } from './explain-shrink.ts';
import { explainThread } from './explain-thread.ts';
import { explainWork } from './explain-work.ts';
import type { Explained } from './explained.ts';

/**
 * The derivation of every figure of a plan but its steps, in the caller's unit.
 *
 * Each `formula` is plain arithmetic (`+ - * / ** ( )` and `floor ceil sqrt round max`) over the names in
 * `numbers`; reckoning it gives `value`, which is the figure at `path` of the answer.
 */
export function explainPlan(explained: Explained): readonly Derivation[] {
  return [
    ...explainSize(explained),
    ...explainShrink(explained),
    ...explainCloth(explained),
    ...explainThread(explained),
    ...explainSewing(explained),
    ...explainWork(explained),
    ...explainClass(explained),
  ];
}

function explainSize({ input, plan, figures }: Explained): readonly Derivation[] {
  const inUnit = (value: number) => fromMillimetres(value, input.unit, 9);
  const { columns, rows } = plan.grid;
  const cut = inUnit(plan.block.cut);
  const { seam, snipDepth } = input.block;
  const face = inUnit(plan.face);
  const wish = { width: inUnit(plan.wish.width), height: inUnit(plan.wish.height) };
  const fitted = plan.wish.at === 'sewn' ? plan.sewn : plan.washed;
  const geometry = 'Plain geometry';
  const say = (
    path: string,
    formula: string,
    numbers: Readonly<Record<string, number>>,
    value: number,
  ): Derivation => ({ path, formula, numbers, value, source: geometry });
  return [
    say('grid.blocks', 'columns * rows', { columns, rows }, figures.grid.blocks),
    say('block.face', 'cut - 2 * seam', { cut, seam }, figures.block.face),
    say('block.clearance', 'seam - snipDepth', { seam, snipDepth }, figures.block.clearance),
    say(
      'size.sewn.width',
      'columns * face + 2 * seam',
      { columns, face, seam },
      figures.size.sewn.width,
    ),
    say(
      'size.sewn.height',
      'rows * face + 2 * seam',
      { rows, face, seam },
      figures.size.sewn.height,
    ),
    say(
      'size.stitchLine.width',
      'columns * face',
      { columns, face },
      figures.size.stitchLine.width,
    ),
    say('size.stitchLine.height', 'rows * face', { rows, face }, figures.size.stitchLine.height),
    say(
      'fit.width',
      'size - wish',
      { size: inUnit(fitted.width), wish: wish.width },
      figures.fit.width,
    ),
    say(
      'fit.height',
      'size - wish',
      { size: inUnit(fitted.height), wish: wish.height },
      figures.fit.height,
    ),
    ...explainWish({ input, figures }),
    say('bulk.seamLayers', '2 * layers', { layers: plan.layers }, figures.bulk.seamLayers),
    say('bulk.crossingLayers', '4 * layers', { layers: plan.layers }, figures.bulk.crossingLayers),
    {
      path: 'bulk.crossingThickness',
      formula: '4 * thickness',
      numbers: { thickness: roundTo(plan.thickness, 9) },
      value: figures.bulk.crossingThickness,
      source: SOURCES.practice,
    },
  ];
}

/** The size of a quilt for a bed: the mattress and the cloth that hangs down from it. */
function explainWish({
  input,
  figures,
}: Pick<Explained, 'input' | 'figures'>): readonly Derivation[] {
  const hang = findDrops(input);
  if (hang === undefined) return [];
  const { wish } = figures;
  return [
    derive('wish.width', hang.source, [
      'mattress + 2 * drop',
      { mattress: hang.width, drop: hang.drop },
      wish.width,
    ]),
    derive('wish.height', hang.source, [
      'mattress + footDrop',
      { mattress: hang.length, footDrop: hang.footDrop },
      wish.height,
    ]),
  ];
}

interface Drops {
  readonly width: number;
  readonly length: number;
  readonly drop: number;
  readonly footDrop: number;
  readonly source: string;
}

/** The mattress and its drops in the caller's unit, where the wish is for a bed. */
function findDrops({ target, unit }: Explained['input']): Drops | undefined {
  if ('bed' in target) return { ...target.bed, source: SOURCES.practice };
  if (!('size' in target)) return undefined;
  const row = findSize(target.size, target.region);
  if (row?.kind !== 'bed') return undefined;
  const { drop } = DEFAULTS[unit];
  const width = fromMillimetres(row.width, unit, 9);
  const length = fromMillimetres(row.height, unit, 9);
  return { width, length, drop, footDrop: drop, source: row.source };
}
