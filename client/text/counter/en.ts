import { makeCount } from '../make-count.ts';

const count = makeCount('en');

/** What the counter says beside the words that all elements share, in English. */
export const en = {
  language: 'en',
  squares: (number: number) => count(number, 'square', 'squares'),
  /** A print that nobody named goes by its letter. */
  print: (letter: string) => `Print ${letter}`,
  /** A cloth that nobody named. */
  cloth: 'Your squares',
  start: {
    title: 'What do you need?',
    address: 'Address of a plan',
    addressHint: 'Paste what the plan’s page has in its address bar.',
    open: 'Open it',
    noPlan:
      'There is no plan in that. Paste the whole address, with what stands behind the question mark.',
    last: 'The last plan on this device',
    or: 'Or squares of one size',
    cut: 'Side of a square',
    count: 'How many',
    go: 'Show what to ask for',
  },
  ask: 'Ask for',
  tooNarrow: 'Too narrow',
  narrowHint: (side: string) => `A square of ${side} does not fit across this bolt.`,
  strips: (strips: number, squares: number, side: string) =>
    `${count(strips, 'strip', 'strips')} of ${count(squares, 'square', 'squares')}, ${side} each`,
  off: (width: string) => `off ${width}`,
  of: (at: number, all: number) => `${at} of ${all}`,
  modes: { bolt: 'Bolt', left: 'Is it enough?', other: 'Compare', list: 'List' },
  modesLegend: 'What to do',
  width: 'Bolt width',
  widths: 'How wide is the bolt?',
  ownWidth: 'Another width',
  price: (unit: string) => `Price a ${unit === 'yd' ? 'yard' : 'metre'}`,
  badPrice: 'That is no price. Write 12.99 or 12,99.',
  left: 'Left on the bolt',
  leftHint: 'Type what the label or the shop says, and see whether it is enough.',
  enough: 'Enough',
  enoughBy: (squares: number) =>
    `It gives ${count(squares, 'square', 'squares')} more than you need.`,
  exactly: 'Exactly enough',
  short: 'Not enough',
  shortBy: (gives: number, needs: number) =>
    `It gives ${gives} of the ${count(needs, 'square', 'squares')} that you need.`,
  nearest: 'The nearest quilt that it makes',
  nearestIs: (across: number, down: number, cut: string) =>
    `${across} by ${down} blocks, cut ${cut}`,
  nearestSize: (size: string) => `${size} once washed`,
  take: 'Make this one',
  none: 'It makes no quilt with the cloth that you have.',
  one: 'This bolt',
  two: 'The other bolt',
  otherWidth: 'Width of the other',
  otherPrice: 'Its price',
  thisCloth: 'This cloth',
  whole: 'Whole quilt',
  cheaper: {
    one: (money: string) => `This bolt is cheaper by ${money}.`,
    two: (money: string) => `The other bolt is cheaper by ${money}.`,
    same: 'They cost the same.',
    unknown: 'Type both prices to compare.',
  },
  withoutPrice: (cloths: number) => `${count(cloths, 'cloth has', 'cloths have')} no price yet.`,
  bought: 'Bought',
  boughtOf: (got: number, all: number) => `${got} of ${all} bought`,
  soFar: 'So far',
  all: 'In all',
  previous: 'The cloth before',
  next: 'The next cloth',
  share: 'Share',
  code: 'Show a code',
  codeTitle: 'This list, for another phone',
  codeHint:
    'Its camera opens the list. It works there without signal too, once that phone has had this page open.',
  unfetched: 'What does this could not be fetched. Try again when there is a signal.',
  tooLong: 'This list is too long for a code. Share its address instead.',
  another: 'Another quilt',
  faulty: 'What was asked for could not be read:',
  spare: (squares: number) => `${count(squares, 'spare one', 'spare ones')} included`,
  said: (cloth: string, amount: string) => `${cloth}: ask for ${amount}.`,
};
