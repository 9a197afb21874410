import type { PlanAnswer } from '#core/contract.ts';
import { makeCount } from '../make-count.ts';

const count = makeCount('en');

const machines: Readonly<Record<PlanAnswer['weight']['washer']['machine'], string>> = {
  household: 'a household washer takes it',
  large: 'it wants a large washer',
  laundry: 'it wants the machines of a laundry',
};

/** What the plan says beside the words that all elements share, in English. */
export const en = {
  language: 'en',
  machines,
  section: (name: string) => name.charAt(0).toUpperCase() + name.slice(1),
  kinds: { own: 'My own size', bed: 'My own mattress', grid: 'So many blocks' },
  states: { sewn: 'Sewn', washed: 'Washed' },
  side: (name: string, state: string) => `${name}, ${state.toLowerCase()}`,
  entries: {
    width: 'Width',
    height: 'Length',
    'bed.width': 'Mattress width',
    'bed.length': 'Mattress length',
    'bed.drop': 'Hang at the sides',
    'bed.footDrop': 'Hang at the foot',
    columns: 'Blocks across',
    rows: 'Blocks down',
    cut: 'Or a size of your own',
    seam: 'Seam',
    snipDepth: 'Snip depth',
    snipPitch: 'Between snips',
  },
  wish: {
    title: 'Your wish',
    label: 'In your own words',
    example: 'a throw, 40 by 50 inches',
    go: 'Plan it',
    kind: 'Size',
    region: 'Region',
    blocks: (columns: number, rows: number) => `${columns} × ${rows} blocks`,
    at: 'This size is',
    read: (what: string) => `Read as ${what}. Blocks and cloth are set below.`,
  },
  blocks: {
    title: 'Blocks',
    cut: 'Cut squares of',
    choose: 'Best fit',
    more: 'Seam and snips',
    explain: 'The seam stands up on the front. Snipped and washed, it becomes the fringe.',
  },
  cloth: {
    title: 'Cloth',
    prints: 'Prints in the top',
    fewer: 'One print fewer',
    more: 'One print more',
    none: 'None',
    bolts: 'Bolts and prewashing',
    width: (role: string) => `${role}, bolt width`,
    prewashed: (role: string) => `${role} is washed before cutting`,
    turned: 'Turn every other block, so it shrinks alike both ways',
  },
  plan: 'Your plan',
  drawing: (across: number, down: number, size: string) =>
    `The quilt to scale: ${across} blocks across, ${down} down, ${size}.`,
  figures: { blocks: 'Blocks', each: 'cut', cloth: 'Cloth', work: 'Work' },
  fit: {
    width: ['wider than your wish', 'narrower than your wish', 'As wide as your wish'],
    height: ['longer', 'shorter', 'as long'],
  } as Readonly<Record<'width' | 'height', readonly [string, string, string]>>,
  between: (from: string, to: string) => `Cloth varies: ${from} to ${to}.`,
  shopping: {
    title: 'Buy and cut',
    columns: ['Cloth', 'Buy', 'Strips', 'Squares'] as readonly string[],
    each: (squares: number) => `× ${squares}`,
    idle: (prints: number) =>
      `No block is left for ${count(prints, 'print', 'prints')}. Take fewer.`,
    how: (cut: string) =>
      `Cut strips ${cut} tall across the bolt, each into its squares. Spares included.`,
    thread: 'Thread',
    threadText: (amount: string, bobbins: number, saved: string) =>
      `At most about ${amount}, half of it on ${count(bobbins, 'bobbin', 'bobbins')}. Sewing in a chain saves ${saved}.`,
  },
  facts: {
    title: 'What to expect',
    work: 'Work',
    workText: (hours: string, snips: string) =>
      `About ${hours} at the table${snips && `, ${snips} of it snipping`}.`,
    weight: 'Weight',
    weightText: (dry: string, wet: string, machine: string) =>
      `${dry} dry, ${wet} wet: ${machine}.`,
    rows: 'Row ends',
    rowsText: (ease: string, middle: number, end: number) =>
      `Joined from the middle out, ${middle} in 100 meet within ${ease}; from one end, ${end}.`,
    shrink: 'Shrink',
    shrinkText: (across: string, down: string) => `${across} across, ${down} down.`,
  },
  others: 'Other plans that fit',
  moreOthers: 'More',
  notes: {
    cautions: 'Before you begin',
    assumptions: 'What we took for granted',
    why: 'How each figure is reckoned',
  },
  stale: 'The plan shown is the one from before.',
  ready: (across: number, down: number, figures: string) =>
    `Planned: ${across} by ${down} blocks, ${figures}.`,
};
