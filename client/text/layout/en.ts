import { makeCount } from '../make-count.ts';

const count = makeCount('en');

/** What the layout says beside the words that all light elements share, in English. */
export const en = {
  title: 'Grid and prints',
  columns: 'Blocks across',
  rows: 'Blocks down',
  prints: 'Prints',
  name: (letter: string) => `Print ${letter}, name`,
  count: (letter: string) => `Print ${letter}, blocks`,
  fewer: 'One print fewer',
  more: 'One print more',
  /** Counts that do not fill the grid. */
  short: (blocks: number) => `${count(blocks, 'block', 'blocks')} short.`,
  over: (blocks: number) => `${count(blocks, 'block', 'blocks')} too many.`,
  /** Makes other counts fill the grid. */
  share: 'Share out the difference',
  even: 'Leave the counts empty to share the grid evenly.',
  pattern: 'Pattern',
  patterns: {
    scattered: 'Scattered',
    checkerboard: 'Checkerboard',
    diagonal: 'Diagonal',
    rings: 'Rings',
  },
  touch: 'What counts as touching',
  touches: { sides: 'Sides', corners: 'Sides and corners' },
  another: 'Another arrangement',
  undo: 'Undo',
  redo: 'Redo',
  mode: 'A tap',
  modes: { swap: 'Swaps', pin: 'Pins' },
  size: 'Show',
  sizes: { whole: 'The whole', large: 'Large blocks' },
  /** How the grid is used. */
  how: 'Tap two blocks and they change places. Hold one to pin it; pinned blocks stay through every other arrangement. With the keyboard: arrows, Enter, P to pin.',
  board: (across: number, down: number) => `The quilt, ${across} blocks across and ${down} down`,
  row: (name: string) => `Row ${name}`,
  column: (number: number) => `Column ${number}`,
  topLeft: 'Top left',
  cell: (row: string, column: number, print: string) => `${row}${column}, ${print}`,
  pinned: 'pinned',
  held: 'picked up',
  touching: 'touches its own print',
  figures: {
    sides: 'Touching at sides',
    corners: 'Touching at corners',
    fewest: 'Fewest there can be',
    spread: 'Rows off an even share',
  },
  wide: 'The grid is wider than the page. Slide it sideways, or show the whole.',
  color: (letter: string) => `Print ${letter}, colour`,
  heads: ['Name', 'Blocks'],
  /** What can be wrong with a grid that was handed over, and with pins. */
  ragged: 'The grid of the link has another number of rows than this quilt, so it was left out.',
  uneven: (row: string) =>
    `Row ${row} of the grid has more or fewer blocks than the quilt is wide.`,
  stranger: (row: string, letter: string) =>
    `Row ${row} of the grid says “${letter}”, and there is no such print.`,
  tooFew: (letter: string, pinned: number) =>
    `Print ${letter} is pinned ${pinned} times. Give it as many blocks, or free some.`,
  best: 'No layout of these prints touches less.',
  /** The prints, each with its blocks and how it lies. */
  spread: 'How evenly each print lies',
  columnsOf: ['Print', 'Blocks', 'Off by rows', 'Off by columns', 'Off centre'],
  taken: (cell: string) => `${cell} is picked up. Choose the block it changes places with.`,
  letGo: (cell: string) => `${cell} is put down again.`,
  pinnedNow: (cell: string) => `${cell} is pinned.`,
  unpinnedNow: (cell: string) => `${cell} is free.`,
  stuck: (cell: string) => `${cell} is pinned and stays. Pin it again to free it.`,
  swapped: (one: string, other: string) => `${one} and ${other} changed places.`,
  pairs: (pairs: number) => (pairs === 0 ? 'Nothing touches.' : `Pairs that touch: ${pairs}.`),
  print: 'Print the floor sheet',
  floor: (name: string) => `Floor sheet${name}`,
  page: (letter: string, pages: number) => `, page ${letter} of ${pages}`,
  pages: 'How the pages lie',
  link: 'The figures of this layout',
};
