import type { PlanAnswer } from '#core/contract.ts';
import { makeCount } from '../make-count.ts';

const count = makeCount('en');

const machines: Readonly<Record<PlanAnswer['weight']['washer']['machine'], string>> = {
  household: 'a household washer takes it',
  large: 'it wants a large washer',
  laundry: 'it wants the machines of a laundry',
};

/** What the plan says of what the quilt is made of and of what it takes, in English. */
export const en = {
  language: 'en',
  machines,
  section: (name: string) => name.charAt(0).toUpperCase() + name.slice(1),
  edges: {
    cut: 'Or a size of your own',
    seam: 'Seam',
    snipDepth: 'Snip depth',
    snipPitch: 'Between snips',
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
  notes: {
    cautions: 'Before you begin',
    assumptions: 'What we took for granted',
    why: 'How each figure is reckoned',
  },
  ways: {
    title: 'Take this plan along',
    counter: 'To the cutting counter',
    compare: 'Compare it',
    layout: 'Move its blocks',
  },
};
