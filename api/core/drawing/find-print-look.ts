/** The figures that a print may carry. */
export type Motif =
  | 'dots'
  | 'stripes'
  | 'sprigs'
  | 'checks'
  | 'rings'
  | 'zigzag'
  | 'crosses'
  | 'bricks';

/** How a print is drawn: the cloth's colour, the figure on it and the figure's colour. */
export interface PrintLook {
  readonly ground: string;
  readonly figure: string;
  readonly motif: Motif;
}

/** Nine grounds in steps of lightness, so that they stay apart for every kind of colour vision. */
const CLOTHS: readonly (readonly [ground: string, figure: string])[] = [
  ['#2f4f80', '#dbe5f0'],
  ['#c65f44', '#fbe3cd'],
  ['#dba336', '#7a4d0c'],
  ['#6b9f98', '#1f4d49'],
  ['#552a4a', '#e9c9d8'],
  ['#a9cbe6', '#2f5580'],
  ['#505c20', '#e9ebc4'],
  ['#f0bdb9', '#8a2f38'],
  ['#f3ecd9', '#7d6c48'],
];

const MOTIFS: readonly Motif[] = [
  'dots',
  'stripes',
  'sprigs',
  'checks',
  'rings',
  'zigzag',
  'crosses',
  'bricks',
];

/**
 * Says how to draw a print so that it is told from the others by its figure as well as its colour:
 * eight figures on nine grounds meet again only after 72 prints.
 *
 * @param print 0 for the first print, at most 25.
 * @param color the cloth's own colour as `#rrggbb`, where the person gave one.
 *
 * @example
 * findPrintLook(1).motif // => 'stripes'
 */
export function findPrintLook(print: number, color?: string): PrintLook {
  const [ground, figure] = CLOTHS[print % CLOTHS.length] ?? ['#f3ecd9', '#7d6c48'];
  const motif = MOTIFS[print % MOTIFS.length] ?? 'dots';
  if (color === undefined) return { ground, figure, motif };
  return { ground: color, figure: isDark(color) ? '#fbf6ea' : '#1d2433', motif };
}

/** Whether white reads better than ink on a colour; the weights are those of relative luminance. */
function isDark(color: string): boolean {
  const [red = 0, green = 0, blue = 0] = [1, 3, 5].map((at) =>
    Number.parseInt(color.slice(at, at + 2), 16),
  );
  return 0.2126 * red + 0.7152 * green + 0.0722 * blue < 128;
}
