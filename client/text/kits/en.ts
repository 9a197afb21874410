import type { KitLimit, Role } from '#core/contract.ts';
import type { FaultCode } from '#core/faults.ts';
import type { Fault } from '#core/outcome.ts';
import { makeCount } from '../make-count.ts';

const limits: Readonly<Record<KitLimit, string>> = {
  top: 'print',
  middle: 'middle cloth',
  backing: 'backing',
  mostOfOne: 'a wider choice of prints',
  distinctPrints: 'more different prints',
};
const many = makeCount('en');

/** What the page about kits says beside the words that all pages share, in English. */
export const en = {
  language: 'en',
  faults: {
    'mixed-currencies': ({ received = 'Some of it', expected = 'another currency' }) =>
      `${received} stands beside ${expected}. Give all money in one currency.`,
    'price-unclear': () => 'Not all of these can hold. Give a margin, a markup or a price.',
    'percents-do-not-sum': ({ received = 'not 100' }) =>
      `These percents add up to ${received}. Make them 100 together.`,
  } satisfies Partial<Readonly<Record<FaultCode, (fault: Fault) => string>>>,
  table: 'Bolts',
  costs: { in: 'Cost a yard', cm: 'Cost a metre' },
  kit: {
    title: 'The kit',
    size: 'Quilt',
    own: 'My own size',
    grid: 'So many blocks',
    width: 'Width, washed',
    height: 'Length, washed',
    columns: 'Blocks across',
    rows: 'Blocks down',
    cut: 'Squares of',
    best: 'best fit',
    wanted: 'Kits wanted',
    all: 'all',
    distinctPrints: 'Prints, at least',
    mostOfOne: 'Of one, at most',
    any: 'any',
    spare: 'Spare squares',
  },
  money: {
    title: 'Money, for one kit',
    currency: 'Currency',
    packaging: 'Packaging',
    labour: 'Labour',
    overhead: 'Overhead',
    asked: 'I set',
    ways: { none: 'no price', margin: 'a margin', markup: 'a markup', price: 'the price' },
    margin: 'Margin, % of the price',
    markup: 'Markup, % of the cost',
    price: 'Price',
    unclear: (typed: string) => `“${typed}” is not an amount. Write 11.20 or 11,20.`,
  },
  result: {
    title: 'Kits',
    kits: 'Kits',
    most: (most: number) => `of ${most}`,
    cost: 'Costs',
    costs: (money: string) => `costs ${money}`,
    price: 'Sells at',
    none: 'No kit yet',
    empty: 'Type a bolt of print and one of backing, and the kits show here.',
    noneOf: 'These bolts give no whole kit.',
    limited: (by: readonly KitLimit[]) =>
      by.length === 0
        ? ''
        : `One more kit wants ${new Intl.ListFormat('en').format(by.map((one) => limits[one]))}.`,
    group: (count: number) => many(count, 'kit', 'kits'),
    squares: (count: number, name: string) => `${count} ${name}`,
    others: (count: number, role: Role) =>
      `${many(count, 'square', 'squares')} of ${limits[role]} in each.`,
    drawing: (squares: string) => `The squares of one kit, print by print: ${squares}.`,
    grid: (columns: number, rows: number, cut: string) =>
      `Each is a quilt of ${columns} by ${rows} blocks, squares cut ${cut}.`,
  },
  cutting: {
    title: 'Cut the bolts',
    columns: ['Bolt', 'Strips', 'Squares', 'Takes', 'Left'],
    how: (cut: string) =>
      `Strips ${cut} across the bolt, then squares. The numbers count strips; a white square is in no kit.`,
    over: (count: number) => `and ${many(count, 'square', 'squares')}`,
    drawing: (name: string, strips: number, across: number) =>
      `${name}: ${many(strips, 'strip', 'strips')} of ${many(across, 'square', 'squares')}, to scale.`,
    untouched: 'not cut',
  },
  buy: {
    title: (kits: number) => `To make ${many(kits, 'kit', 'kits')}, buy more`,
    line: (amount: string, name: string, squares: number) =>
      `${amount} of ${name}, for ${many(squares, 'square', 'squares')}.`,
    cloths: { top: 'another print', middle: 'middle cloth', backing: 'backing' } as Readonly<
      Record<Role, string>
    >,
  },
  sheet: {
    title: 'One kit on the shelf',
    rows: {
      materials: 'Cloth',
      labour: 'Labour',
      packaging: 'Packaging',
      overhead: 'Overhead',
      cost: 'Cost',
      price: 'Price',
      marginPercent: 'Margin',
    },
    noMoney: 'Give every bolt a cost, and the money shows here.',
    weight: 'Weight',
    content: 'Fibres',
    care: 'Care',
  },
  cautions: 'Before you cut and sell',
  assumptions: 'What we took for granted',
  stale: 'What is shown is from before.',
  ready: (figures: string) => `Worked out: ${figures}.`,
};
