import type { Role, StashLimit } from '#core/contract.ts';
import { makeCount } from '../make-count.ts';

const count = makeCount('en');

const limits: Readonly<Record<Exclude<StashLimit, Role>, string>> = {
  touch: 'More blocks would make a print meet itself.',
  target: 'It is as large as you wished.',
  shape: 'There is cloth for more blocks, but not for a whole row in this shape.',
  greatest: 'A larger quilt cannot be planned.',
};

const missing: Readonly<Record<Role, string>> = {
  top: 'print',
  middle: 'middle cloth',
  backing: 'backing',
};

/** What the page about a stash says beside the words that all pages share, in English. */
export const en = {
  language: 'en',
  table: 'What you have',
  wish: 'What it may be',
  cut: 'Squares of',
  anyCut: 'any',
  cutHint: 'Left empty, 6 to 12 in or 15 to 30 cm are tried.',
  shape: 'Shape',
  shapes: {
    throw: 'A throw: four wide, five high',
    square: 'Square',
    tall: 'Tall: two wide, three high',
    wide: 'Wide: five wide, four high',
    own: 'As the address says',
  },
  touch: 'Like prints may',
  touches: { '': 'meet', sides: 'not share a side', corners: 'not meet at all' },
  seam: 'Seam',
  more: 'Seam and edges',
  squaring: 'Cut off each piece to straighten it',
  result: 'What it makes',
  none: 'No quilt yet',
  empty: 'Type a piece of print, and what it makes shows here.',
  small:
    'These pieces give no quilt that can be laid as you ask. Try smaller squares, let like prints meet, or add cloth.',
  figures: { washed: 'Washed', blocks: 'Blocks', each: 'cut' },
  /** What keeps the quilt from being larger. */
  limited: (by: readonly StashLimit[]) => {
    const cloth = (['top', 'middle', 'backing'] as const).filter((role) => by.includes(role));
    const more = new Intl.ListFormat('en').format(cloth.map((role) => missing[role]));
    const others = by.flatMap((one) => (one in limits ? limits[one as keyof typeof limits] : []));
    return [...(more === '' ? [] : [`More ${more} would make it larger.`]), ...others].join(' ');
  },
  drawing: (across: number, down: number, size: string) =>
    `The quilt to scale: ${across} blocks across, ${down} down, ${size}.`,
  sewn: (size: string) => `Sewn it is ${size}.`,
  touching: (sides: number, corners: number) => {
    if (sides + corners === 0) return 'No print meets itself.';
    if (sides === 0)
      return `No print shares a side with itself; ${count(corners, 'corner meets', 'corners meet')}.`;
    return `Prints share ${count(sides, 'side', 'sides')} with themselves.`;
  },
  others: 'Other quilts it makes',
  cutting: 'Cut',
  cuttingHow: (cut: string) =>
    `Squares of ${cut}. Small pieces go first, so that large ones stay whole.`,
  pieces: 'Piece',
  squares: 'Squares',
  left: 'Left',
  nothingLeft: 'scraps',
  rectangle: (pieces: number, size: string) => {
    if (pieces === 1) return size;
    return `${pieces} of ${size}`;
  },
  buy: (squares: number, role: Role, cut: string) =>
    `Buy cloth for ${count(squares, 'square', 'squares')} of ${missing[role]}, ${cut} each.`,
  sheet: (name: string, size: string, squares: number) =>
    `${name}, ${size}: ${count(squares, 'square', 'squares')}, strip by strip.`,
  sheetText: (size: string, squares: number) => `${size}, ${count(squares, 'square', 'squares')}.`,
  along: 'Cut along the length; drawn on its side.',
  plan: 'Plan this quilt',
  cautions: 'Before you cut',
  assumptions: 'What we took for granted',
  stale: 'What is shown is from before.',
  ready: (figures: string) => `Worked out: ${figures}.`,
};
