import { makeCount } from '../make-count.ts';

const count = makeCount('en');

/** What the view of one step and the hand-out for a class say, in English. */
export const en = {
  focus: {
    title: 'The work, step by step',
    step: (at: number, all: number) => `Step ${at} of ${all}`,
    close: 'Back to the plan',
    back: 'Back',
    next: 'Done, next',
    last: 'All done',
    done: 'This step is done',
    keys: 'With a keyboard, the arrows turn the pages and leave the ticks alone.',
  },
  handOut: {
    title: 'Hand-out for a class',
    explain: 'Two pages to print: what to bring, and the steps with the figures of this quilt.',
    heading: 'Heading',
    headingExample: 'Rag quilt evening, Tuesday at six',
    usual: 'Rag quilt class',
    pupils: 'Pupils',
    note: 'A note of your own, if you like',
    noteExample: 'Bring your machine, its foot pedal and something to drink.',
    print: 'Print two pages',
    cancel: 'Back to the plan',
    fault: (most: number) => `Give a whole number of pupils, 1 to ${most}.`,
    busy: 'Working out what the class needs.',
  },
  sheet: {
    /** Over the columns of the list. */
    cloth: 'Cloth',
    squares: (cut: string) => `Squares of ${cut}`,
    each: 'Each pupil buys',
    /** Behind several prints of which the same is bought. */
    ofEach: '(of each)',
    all: (pupils: number) => `The class buys, ${count(pupils, 'pupil', 'pupils')}`,
    list: 'What to bring',
    thread: 'Thread, at most about',
    bobbins: 'Bobbins, wound full',
    needles: (size: string) => `Machine needles, size ${size}`,
    blades: 'Rotary blades, new',
    also: 'And for each pupil: a sewing machine with its walking foot if there is one, a rotary cutter with ruler and mat, spring-loaded snips, pins, glasses.',
    bought: 'For the class, each cloth is bought in one piece and cut as one.',
    lacking: (squares: number) => `${count(squares, 'square', 'squares')} short`,
    sizes: 'Sizes',
    blocks: 'Blocks',
    blocksText: (across: number, down: number, all: number) =>
      `${across} across, ${down} down: ${all}`,
    cut: 'Cut',
    seam: 'Seam',
    snips: 'Snips',
    snipsText: (depth: string, pitch: string) => `${depth} deep, ${pitch} apart`,
    clearance: 'Left uncut before the seam',
    sewn: 'Sewn',
    washed: 'Washed',
    work: 'Work at the table',
    weight: 'Weight, dry',
    where: 'Where each print goes',
    whereText: 'Row A is the top row. The pin marks the top-left block.',
    steps: 'The work in order',
    care: 'Take care',
  },
};
