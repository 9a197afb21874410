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
const GROUNDS = [
  '#2f4f80',
  '#c65f44',
  '#dba336',
  '#6b9f98',
  '#552a4a',
  '#a9cbe6',
  '#505c20',
  '#f0bdb9',
  '#f3ecd9',
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
  const ground = color ?? GROUNDS[print % GROUNDS.length] ?? '#f3ecd9';
  const motif = MOTIFS[print % MOTIFS.length] ?? 'dots';
  return { ground, figure: isDark(ground) ? '#fbf6ea' : '#1d2433', motif };
}

/** Whether white reads better than ink on a colour; the weights are those of relative luminance. */
function isDark(color: string): boolean {
  const [red = 0, green = 0, blue = 0] = [1, 3, 5].map((at) =>
    Number.parseInt(color.slice(at, at + 2), 16),
  );
  return 0.2126 * red + 0.7152 * green + 0.0722 * blue < 128;
}
