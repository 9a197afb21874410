import type { SizeName } from '#core/contract.ts';

/** `california-king` as `California king`. */
const say = (name: string) => name.charAt(0).toUpperCase() + name.slice(1).replace('-', ' ');

/** What the size says beside the words that all small elements share, in English. */
export const en = {
  title: 'How large shall it be?',
  kind: 'Size',
  kinds: { own: 'My own size', bed: 'My own mattress', grid: 'So many blocks' },
  size: say as (name: SizeName) => string,
  entries: {
    width: 'Width, washed',
    height: 'Length, washed',
    'bed.width': 'Mattress width',
    'bed.length': 'Mattress length',
    columns: 'Blocks across',
    rows: 'Blocks down',
  },
  blocks: 'Blocks',
  cut: (length: string) => `cut ${length}`,
  washed: 'Washed',
  sewn: (size: string) => `sewn ${size}`,
  fit: (difference: string) => `Beside your wish: ${difference}.`,
  wider: (by: string) => `${by} wider`,
  narrower: (by: string) => `${by} narrower`,
  longer: (by: string) => `${by} longer`,
  shorter: (by: string) => `${by} shorter`,
  same: 'the same',
  cloth: 'Cloth to buy',
  lacking: (squares: number) => `Not enough of it is on offer. Squares short: ${squares}`,
  cost: 'Cost of the cloth',
  work: 'Work',
  whole: 'The whole plan',
  drawing: (across: number, down: number) => `The blocks to scale: ${across} across, ${down} down.`,
  ready: (across: number, down: number, size: string) =>
    `${across} by ${down} blocks, washed ${size}.`,
};
