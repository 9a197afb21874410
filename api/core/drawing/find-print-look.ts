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
  ['#c0583f', '#fbe3cd'],
  ['#e3b54f', '#7a4d0c'],
  ['#76aca2', '#1f4d49'],
  ['#5d2f4f', '#e9c9d8'],
  ['#b5d0e4', '#2f5580'],
  ['#69702f', '#e9ebc4'],
  ['#e8aaa4', '#8a2f38'],
  ['#eee3c9', '#7d6c48'],
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
  const [ground, figure] = CLOTHS[print % CLOTHS.length] ?? ['#eee3c9', '#7d6c48'];
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
