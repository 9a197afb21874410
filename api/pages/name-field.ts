import { SIZES } from '#core/tables/sizes.ts';

/** What stands before a field; `#` is a position in a list, counted from 1. What is not here has no field. */
const NAMES: Readonly<Record<string, string>> = {
  unit: 'Measured in',
  'target.size': 'Size',
  'target.width': 'Width',
  'target.height': 'Height',
  'target.columns': 'Blocks across',
  'target.rows': 'Blocks down',
  'target.bed.width': 'Mattress width',
  'target.bed.length': 'Mattress length',
  'target.bed.drop': 'Drop at the sides',
  'block.cut': 'Cut of a block',
  'block.seam': 'Seam allowance',
  washes: 'Washes',
  'sewn.width': 'Width as sewn',
  'sewn.height': 'Height as sewn',
  'wanted.width': 'Width wanted',
  'wanted.height': 'Height wanted',
  'swatches.#.direction': 'Swatch #, direction',
  'swatches.#.before': 'Swatch #, before the wash',
  'swatches.#.after': 'Swatch #, after the wash',
  'fabrics.#.width': 'Cloth #, width',
  'fabrics.#.lengthLeft': 'Cloth #, length left',
  'fabrics.#.pieces.#.width': 'Cloth #, piece #, width',
  'fabrics.#.pieces.#.length': 'Cloth #, piece #, length',
  'fabrics.#.pieces.#.count': 'Cloth #, piece #, how many',
  columns: 'Blocks across',
  rows: 'Blocks down',
  'prints.#.id': 'Print #',
  'prints.#.count': 'Print #, blocks',
  pattern: 'Pattern',
  touch: 'Like blocks may not share',
  seed: 'Arrangement number',
  'pieces.#.width': 'Piece #, width',
  'pieces.#.length': 'Piece #, length',
  'pieces.#.count': 'Piece #, how many',
  'plan.target.columns': 'Blocks across',
  'plan.target.rows': 'Blocks down',
  'plan.block.cut': 'Cut of a block',
  kits: 'Kits wanted',
  'bolts.#.width': 'Bolt #, width',
  'bolts.#.length': 'Bolt #, length',
};

/** Where there is a short list to choose from. */
const CHOICES: Readonly<Record<string, readonly string[]>> = {
  unit: ['in', 'cm'],
  'target.size': [...new Set(SIZES.map(({ name }) => name))],
  'swatches.#.direction': ['length', 'width'],
  pattern: ['scattered', 'checkerboard', 'diagonal', 'rings'],
  touch: ['corners', 'sides'],
};

/** A field for one part of an input. */
export interface NamedField {
  readonly name: string;
  /** All that it may be; absent where it is typed. */
  readonly choices?: readonly string[];
}

/**
 * The field for one part of a query, or nothing where it is carried along unseen.
 *
 * @param path dotted, such as `swatches.0.before`
 * @example
 * nameField('swatches.1.after') // => { name: 'Swatch 2, after the wash' }
 * nameField('unit') // => { name: 'Measured in', choices: ['in', 'cm'] }
 * nameField('stitch.tail') // => undefined
 */
export function nameField(path: string): NamedField | undefined {
  const positions = path.match(/\d+/g) ?? [];
  const key = path.replace(/\d+/g, '#');
  const name = Object.hasOwn(NAMES, key) ? NAMES[key] : undefined;
  if (name === undefined) return undefined;
  const left = positions.values();
  const filled = name.replaceAll('#', () => `${Number(left.next().value) + 1}`);
  const choices = CHOICES[key];
  return { name: filled, ...(choices !== undefined && { choices }) };
}
