import type { Target } from '../contract.ts';
import { NUMBER_LIMITS } from '../limits.ts';
import { UNIT } from './said-length.ts';

const COUNT = String.raw`(?<![\d.,/])(\d{1,3})`;
const BLOCKS = '(?:blocks?|squares?|patch(?:es)?|grid|layout)';
/** Nothing that would make more of a number. */
const END = String.raw`(?![\d/½¼¾]|[.,]\d)`;
const BETWEEN = String.raw`[\s-]*(?:by|x|×|and|,)?[\s-]*`;

/** Ways to say a grid; in one, rows come first. */
const WAYS: readonly { readonly pattern: RegExp; readonly isTurned: boolean }[] = [
  {
    pattern: new RegExp(
      String.raw`${COUNT}\s*(?:${BLOCKS}\s*)?(?:by|x|×)\s*(\d{1,3})\s*${BLOCKS}`,
      'i',
    ),
    isTurned: false,
  },
  {
    pattern: new RegExp(String.raw`${COUNT}\s*${BLOCKS}\s*(?:by|x|×)\s*(\d{1,3})${END}`, 'i'),
    isTurned: false,
  },
  {
    pattern: new RegExp(
      String.raw`${COUNT}\s*(?:columns?|(?:${BLOCKS}\s*)?across|${BLOCKS}\s*wide)${BETWEEN}(\d{1,3})\s*(?:rows?|(?:${BLOCKS}\s*)?down|${BLOCKS}\s*(?:long|tall|high))`,
      'i',
    ),
    isTurned: false,
  },
  {
    pattern: new RegExp(String.raw`${COUNT}\s*rows?\s*(?:of|and|by|x|×|,)\s*(\d{1,3})${END}`, 'i'),
    isTurned: true,
  },
  {
    pattern: new RegExp(
      String.raw`\bgrid(?:\s+of)?[\s:]*(\d{1,3})\s*(?:by|x|×)\s*(\d{1,3})${END}(?![\s-]*${UNIT})`,
      'i',
    ),
    isTurned: false,
  },
];

/** The words without the grid that they name, a gap in its place. */
export function passCounts(words: string): string {
  const way = WAYS.find(({ pattern }) => pattern.test(words));
  return way === undefined ? words : words.replace(way.pattern, ' · ');
}

/**
 * Reads columns and rows of blocks in a wish: "6 by 8 blocks", "6 x 7 grid", "6 columns and 8 rows", "8 rows of 6".
 *
 * @returns a target, both counts within their limits; nothing where the words name no grid
 *
 * @example
 * readCounts('8 rows of 6 blocks') // => { columns: 6, rows: 8 }
 * readCounts('40 by 50 inches, 8 inch blocks') // => undefined
 */
export function readCounts(words: string): Extract<Target, { columns: number }> | undefined {
  for (const { pattern, isTurned } of WAYS) {
    const match = pattern.exec(words);
    if (match === null) continue;
    const [first, second] = [Number(match[1]), Number(match[2])];
    const counts = isTurned ? { columns: second, rows: first } : { columns: first, rows: second };
    return isGrid(counts) ? counts : undefined;
  }
  return undefined;
}

function isGrid({ columns, rows }: { readonly columns: number; readonly rows: number }): boolean {
  const { columns: across, rows: down } = NUMBER_LIMITS;
  return (
    columns >= across.least && columns <= across.most && rows >= down.least && rows <= down.most
  );
}
