import { globSync, readFileSync } from 'node:fs';
import { fileURLToPath } from 'node:url';

/** One request and whether it can be answered. */
export interface Row {
  readonly name: string;
  readonly input: object;
  readonly ok: boolean;
}

const target = { width: 40, height: 50 };
const top = { role: 'top' };
const backing = { role: 'backing' };
const print = { id: 'Blue sprig' };
const layered = (own: object) => ({ target, layers: [{ ...top, ...own }, backing] });

const good: Readonly<Record<string, object>> = {
  'a throw in inches': { target },
  'a throw as people write it': { target: { width: '40"', height: '1 1/2 yd' } },
  'a sewn size in centimetres': { unit: 'cm', target: { width: 100, height: '120,5', at: 'sewn' } },
  'a named size': { target: { size: 'queen' } },
  'a named size of a region': { unit: 'cm', target: { size: 'super-king', region: 'uk' } },
  'a bed': { target: { bed: { width: 60, length: 80, drop: 12, footDrop: 0 } } },
  'a grid': { target: { columns: 4, rows: 5 }, block: { cut: 8.5, seam: '3/4' } },
  'cut sizes to choose from': { target, cuts: [7, '8 1/2', '25 cm'] },
  'a number of prints': layered({ prints: 6 }),
  'prints by name': layered({
    prints: [print, { id: '12', share: 2, color: '#c04030', value: 30 }],
  }),
  'prints that are counted': {
    target: { columns: 2, rows: 2 },
    layers: [
      {
        ...top,
        prints: [
          { ...print, count: 3 },
          { id: 'Dots', count: 1 },
        ],
      },
      backing,
    ],
  },
  'three layers, measured': {
    target,
    layers: [
      {
        ...top,
        fabric: 'quilting-cotton',
        shrink: { length: 4, width: 3 },
        shrinkWashes: 3,
        prewashed: true,
      },
      { role: 'middle', fabric: 'cotton-batting', gsm: 120, thickness: 2 },
      { ...backing, width: '108 in', selvage: 0.5 },
    ],
  },
  'everything else': {
    target,
    grain: 'aligned',
    washes: 10,
    spare: 0,
    stitch: {
      length: '3 mm',
      tail: 3,
      link: 1,
      chained: false,
      borderPasses: 1,
      bobbin: '60 yd',
      ratio: 2.5,
    },
    pace: { snip: 0.05 },
    tolerance: { seam: '1/16', cut: 0, ease: 0.25 },
    infant: true,
    pupils: 12,
    explain: true,
  },
};

const bad: Readonly<Record<string, object>> = {
  'no target': {},
  'an empty target': { target: {} },
  'two targets': { target: { ...target, size: 'throw' } },
  'half a target': { target: { width: 40 } },
  'a target of text': { target: 'throw' },
  'an unknown size': { target: { size: 'enormous' } },
  'a size of another region': { target: { size: 'california-king', region: 'eu' } },
  'a negative length': { target: { width: -40, height: 50 } },
  'a length of nought': { target: { width: 0, height: 50 } },
  'a length that is none': { target: { width: 'wide', height: 50 } },
  'an empty length': { target: { width: '', height: 50 } },
  'a length of too much text': { target: { width: ` ${'0'.repeat(31)}8`, height: 50 } },
  'a length out of reach': { target: { width: 5000, height: 50 } },
  'a comma of two meanings': { target: { width: '1,250', height: 50 } },
  'a broken number of columns': { target: { columns: 4.5, rows: 5 } },
  'too many columns': { target: { columns: 101, rows: 5 } },
  'too many blocks': { target: { columns: 100, rows: 100 } },
  'an unknown key': { target, colour: 'red' },
  'an unknown key within': { target, block: { colour: 'red' } },
  'no cut size to choose from': { target, cuts: [] },
  'too many cut sizes': { target, cuts: Array(41).fill(8) },
  'one layer': { target, layers: [top] },
  'two tops': { target, layers: [top, top] },
  'an unknown fabric': layered({ fabric: 'felt' }),
  'no prints': layered({ prints: [] }),
  'nought prints': layered({ prints: 0 }),
  'too many prints': layered({ prints: 27 }),
  'a print without a name': layered({ prints: [{ id: '' }] }),
  'two prints of one name': layered({ prints: [print, print] }),
  'a name of too many letters': layered({ prints: [{ id: 'x'.repeat(41) }] }),
  'a colour by name': layered({ prints: [{ ...print, color: 'red' }] }),
  'half a shrink': layered({ shrink: { length: 3 } }),
  'too much shrink': layered({ shrink: { length: 31, width: 3 } }),
  'no washes': { target, washes: 0 },
  'spare as text': { target, spare: '5' },
  'an impossible block': { target, block: { cut: 4, seam: 2 } },
  'snips at the stitching': { target, block: { snipDepth: 1 } },
  'a pace below nought': { target, pace: { snip: -1 } },
  'explain as text': { target, explain: 'yes' },
};

/** Wishes for a plan, and the same with one step wrong. */
export const PLAN_ROWS: readonly Row[] = [
  ...Object.entries(good).map(([name, input]) => ({ name, input, ok: true })),
  ...Object.entries(bad).map(([name, input]) => ({ name, input, ok: false })),
];

/** Every wish that stands anywhere in the demonstration data. */
export function readDemoRows(): readonly Row[] {
  const folder = fileURLToPath(new URL('../../demo-data/', import.meta.url));
  return globSync('**/*.json', { cwd: folder }).flatMap((file) => {
    const found = findWishes(JSON.parse(readFileSync(`${folder}${file}`, 'utf8')));
    return found.map((input, at) => ({ name: `${file}, wish ${at + 1}`, input, ok: true }));
  });
}

function findWishes(value: unknown): readonly object[] {
  if (typeof value !== 'object' || value === null) return [];
  const own = 'target' in value && typeof value.target === 'object' ? [value] : [];
  return own.length > 0 ? own : Object.values(value).flatMap(findWishes);
}
