import type { LayerPull, Role, SwatchNote } from '#core/contract.ts';
import { makeCount } from '../make-count.ts';

const count = makeCount('en');

/** Whether to prewash, and why. */
interface PrewashAdvice {
  readonly why: string;
  readonly reasons: readonly string[];
}

type Way = 'length' | 'width';

const few: Readonly<Record<number, string>> = { 1: 'one wash', 2: 'two washes' };
const times = (washes: number) => few[washes] ?? count(washes, 'wash', 'washes');
const along: Readonly<Record<Way, string>> = { length: 'Along the roll', width: 'Across the roll' };
const layers: Readonly<Record<Role, string>> = {
  top: 'The top',
  middle: 'The middle',
  backing: 'The backing',
};

const notes: Readonly<Record<SwatchNote, string>> = {
  'one-specimen':
    'One pair of marks: nothing is known of the spread. A second swatch would tell of it.',
  'coarse-reading':
    'The change is so small that the ruler blurs it. Set the marks farther apart, or read a finer scale.',
  'grew-back':
    'It shrank less than after fewer washes. Cloth seldom does; it is worth measuring again.',
};

const pulls: Readonly<Record<LayerPull['says'], string>> = {
  tight: 'pulls tight: it wants to shrink more than the quilt lets it.',
  even: 'lies even.',
  puckers: 'will pucker: the quilt shrinks more than it does by itself.',
};

/** What the page about the wash says beside the words that all pages share, in English. */
export const en = {
  language: 'en',
  along,
  times,
  swatches: {
    title: 'Swatches',
    example: 'These swatches are from a shop that does not exist. Type over them, or',
    clear: 'start with an empty table',
    cloth: 'Cloth',
    own: 'A name of my own',
    ownName: 'Its name',
    sandwich: 'A quilted test block',
    washed: 'Washes',
    before: 'Before',
    after: 'After',
    row: (index: number) => `Swatch ${index}`,
    cell: (index: number, way: Way, end: string) =>
      `Swatch ${index}, ${along[way].toLowerCase()}, ${end.toLowerCase()}`,
    fault: (way: Way, end: string) => `${along[way]}, ${end.toLowerCase()}`,
    diagonals: 'Diagonals, for skew',
    diagonal: (index: number, name: string) => `Swatch ${index}, diagonal ${name}`,
    explainDiagonals: 'After the wash, corner to corner of the square: A to C, then B to D.',
    waits: 'A pair with one figure waits for the other.',
    add: 'Add a cloth',
    remove: (name: string) => `Take ${name} away`,
    unused:
      'No layer of the quilt is of this cloth, so it is measured and the quilt stays as it is.',
  },
  ruler: {
    shrinks: 'shrinks',
    grows: 'grows',
    mean: (low: string, high: string) => `The mean lies between ${low} and ${high};`,
    next: (low: string, high: string, sure: number) =>
      `one new piece between ${low} and ${high}, ${sure} times in 100.`,
    count: (n: number, sd: string) => `${n} measured, spread ${sd}.`,
    reading: (blur: string) => `The ruler alone blurs one by ${blur}.`,
    usual: 'Dashed is what the table takes at the first wash:',
    usualOf: (way: Way, usual: string, low: string, high: string) =>
      `${along[way].toLowerCase()} ${usual}, ${low} to ${high}`,
    label: (way: string, change: string) => `${way}: ${change}`,
    notes,
  },
  quilt: {
    title: 'Your quilt',
    kind: 'The size I give is',
    kinds: { wanted: 'wanted, washed', sewn: 'sewn already' },
    width: 'Width',
    height: 'Length',
    none: 'None',
    prewashed: (role: string) => `${role} is washed before cutting`,
    more: 'How sure, how near',
    washes: 'Tell of these washes',
    washesHint: 'The size goes by the first.',
    fit: 'How near it must come',
    confidence: 'Right so often',
    turned: 'Every other block turned, so it shrinks alike both ways',
  },
  result: {
    label: 'The quilt before and after',
    sew: 'Sew',
    sewn: 'Sewn',
    after: (washes: number) => `After ${times(washes)}`,
    either: 'Give or take',
    shrink: 'Shrinks',
    drawing: (sewn: string, washed: string) =>
      `Two outlines to scale: sewn ${sewn}, washed ${washed}.`,
    shown: 'Drawn after so many washes',
    columns: (unit: string) => ['Washes', `Size, ${unit}`, 'Smallest', 'Largest'],
    percentColumns: ['Washes', 'Shrinks, width and length', 'Least', 'Most'],
    nearest: (columns: number, rows: number, cut: string) =>
      `Nearest in whole blocks: ${columns} across, ${rows} down, cut ${cut}.`,
    nearestSize: (sewn: string, washed: string, fit: string) =>
      `That is ${sewn} sewn and ${washed} washed: ${fit}.`,
    fit: {
      width: ['wider', 'narrower', 'as wide'],
      height: ['longer', 'shorter', 'as long'],
    } as Readonly<Record<'width' | 'height', readonly [string, string, string]>>,
    exact: (sewn: string) => `Exact would be ${sewn} sewn.`,
    plan: 'Plan this quilt with these swatches',
    halve: (blocks: number) =>
      `${count(blocks, 'quilted test block', 'quilted test blocks')}, washed and measured both ways, would halve the doubt.`,
    noHalve: 'No number of test blocks would halve the doubt: the cloth itself varies that much.',
    keys: { sewn: 'sewn', washed: 'washed', doubt: 'smallest to largest' },
  },
  course: {
    title: 'Wash by wash',
    drawing: (washes: number) =>
      `Shrink in percent over ${count(washes, 'wash', 'washes')}, a line for each cloth.`,
    washes: 'washes',
    shrink: 'shrink, %',
    quilt: 'The quilt',
    quiltAcross: 'The quilt, width',
    quiltDown: 'The quilt, length',
    limit: (limit: string) => `tends to ${limit}`,
    error: (error: string) => `fitted to ${error}`,
    key: 'Dots are measured, lines fitted. The bars show how far the quilt may be off.',
  },
  advice: {
    title: 'How the layers get on',
    pull: (role: Role, says: LayerPull['says']) => `${layers[role]} ${pulls[says]}`,
    by: (length: string, width: string) => `${length} along, ${width} across, in percent points`,
    prewash: 'Prewash',
    noPrewash: 'No need to prewash',
    /** Why, by the reasons and the layer that pulls most; in English as the service says it. */
    why: ({ why }: PrewashAdvice, _tight: Role | undefined) => why,
    skew: 'Skew',
    skewText: (cloth: string, skew: string, lean: string, side: string) =>
      `${cloth}: ${skew}. A block of ${side} leans ${lean} out of true.`,
    drawing: 'A block as square as cut, and as it leans; drawn four times too much.',
  },
  marking: {
    title: 'Mark, wash, measure',
    drawing: (marks: string, specimen: string) =>
      `A swatch ${specimen} square, marked ${marks} apart three times each way, cut clear of the selvages.`,
    selvage: 'selvage',
    tenth: 'a tenth of the width',
    roll: 'along the roll',
    steps: (marks: string, specimen: string, far: string) => [
      `Cut a swatch ${specimen} square, straight with the threads, clear of the tenth of the width next to each selvage.`,
      `Mark three pairs of points ${marks} apart along the roll and three across. ${far}`,
      'Note which way the roll runs. Overlock or zigzag the edges.',
      'Wash and dry it as the quilt will be. Let it lie flat an hour.',
      'Measure the same pairs again, to the nearest eighth or millimetre, and type them in.',
    ],
    far: {
      in: 'Marks 18 in apart on 24 in read finer.',
      cm: 'Marks 46 cm apart on 61 cm read finer.',
    },
    rows: 'Pairs on one swatch tell how truly you measure. Swatches from other places on the bolt tell how the cloth varies: three are good.',
    source: 'After AATCC TM135 and ISO 5077.',
    print: 'Print a swatch sheet',
    why: (marks: string) =>
      `The sheet carries marks ${marks} apart, the most that fits across both Letter and A4. Change is a percentage, so any distance will do.`,
  },
  sheet: {
    title: 'Swatch sheet',
    check: 'Print at 100 %. Measure this line first:',
    checkAfter: 'If it is not so long, switch off “fit to page” and print again.',
    how: 'Lay the sheet on the cloth. Prick through the centre of each cross with a pin, dot the cloth, and mark which way the roll runs.',
    cloth: 'Cloth',
    date: 'Date',
    washes: 'Washes',
    roll: 'along the roll',
    apart: (marks: string) => `${marks} apart`,
    before: 'Before',
    after: 'After',
    alongRow: ['Along 1', 'Along 2', 'Along 3'],
    acrossRow: ['Across 1', 'Across 2', 'Across 3'],
  },
  table: {
    title: 'What the table takes',
    columns: ['Cloth', 'Along', 'Across'],
    explain: 'Percent of shrink at the first wash, until you measure.',
  },
  notes: { cautions: 'Before you wash', assumptions: 'What we took for granted' },
  stale: 'The figures shown are the ones from before.',
  ready: (figures: string) => `Worked out: ${figures}.`,
};
