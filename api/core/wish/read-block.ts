import { makeLength, NUMBER, type SaidLength, START, UNIT } from './said-length.ts';

const LENGTH = String.raw`(${NUMBER})[\s-]*(${UNIT})?`;
const JOINED = String.raw`(?:(${NUMBER})[\s-]*(?:${UNIT})?\s*(by|x|×|\*|or|to|-|–)[\s-]*)?`;
const BLOCKS = String.raw`(?:charm[\s-]+|finished[\s-]+|cut[\s-]+)?(?:square[\s-]+)?(?:blocks?|squares|patch(?:es)?|pieces?|pre-?cuts?)`;
const SEAMS = String.raw`(?:wide[\s-]+)?(?:seams?(?:[\s-]+allowances?)?|allowances?)`;
const OF = String.raw`(?:\s+(?:of|is|are|at|to|cut|finished|finishing|measuring))*[\s:=]+`;

const CUT_WAYS = [
  new RegExp(String.raw`${START}${JOINED}${LENGTH}[\s-]*${BLOCKS}\b`, 'gi'),
  new RegExp(String.raw`(?<=\b(?:blocks|squares)${OF})()()${LENGTH}`, 'gi'),
];
const SEAM_WAYS = [
  new RegExp(String.raw`${START}${JOINED}${LENGTH}[\s-]*${SEAMS}\b`, 'gi'),
  new RegExp(String.raw`(?<=\bseams?(?:[\s-]+allowances?)?${OF})()()${LENGTH}`, 'gi'),
];
/** One length of a pair, or the start of a number that was cut short. */
const GOES_ON = /^(?:[\d.,/]*\d|[\s-]*(?:by|x|×|\*)[\s-]*\d)/i;

/** Said of blocks, and not of the quilt. */
const FINISHED =
  /\bfinish(?:ed|ing)[\s-]+(?:square[\s-]+)?(?:blocks?|squares|patch(?:es)?)\b|\b(?:blocks?|squares|patch(?:es)?)\s+(?:(?:to\s+)?finish(?:ed|ing)?(?:\s+(?:at|to)\s+\d|\s*(?:[.;,!]|$))|\(finished\))/i;

/** Another length with "and" after it, which stands for itself only as the second side of a quilt. */
const LISTED = new RegExp(String.raw`${START}${NUMBER}[\s-]*(?:${UNIT})?\s*and\s*$`, 'i');
const JOINS = /(?:\bby|\d\S*\s*[x×*]|\w\s*×)[\s-]*$/i;

/** Parts of an inch that have a name, before a seam. */
const PARTS = new RegExp(
  String.raw`\b(?:an?[\s-]+)?(half|quarter|three[\s-]+quarters?)(?:[\s-]+of)?(?:[\s-]+an?)?[\s-]+(?=${UNIT}[\s-]*${SEAMS}\b)`,
  'gi',
);

/** What a wish says of its blocks, and the words without that. */
export interface SaidBlock {
  readonly cut?: SaidLength;
  readonly seam?: SaidLength;
  /** The size is that between the seams, which the trade calls finished. */
  readonly isFinished?: true;
  readonly rest: string;
}

/**
 * Reads the cut size of square blocks and the seam allowance in a wish: "8.5 inch squares", "blocks cut
 * at 9 inches", "half inch seams". A length counts with its unit, or where it is no whole number, which
 * would be a number of blocks; of two that differ none does.
 *
 * @example
 * readBlock('lap, 8.5 inch squares').cut // => { terms: [['8.5', 'in']] }
 * readBlock('lap, half inch seams').seam // => { terms: [['1/2', 'in']] }
 * readBlock('6 by 8 blocks') // => { rest: '6 by 8 blocks' }
 */
export function readBlock(words: string): SaidBlock {
  const text = words.replace(PARTS, (_, part: string) => `${fractionOf(part)} `);
  const seam = take(text, SEAM_WAYS);
  const cut = take(seam.rest, CUT_WAYS);
  return {
    ...(cut.length !== undefined && { cut: cut.length }),
    ...(seam.length !== undefined && { seam: seam.length }),
    ...(cut.length !== undefined && FINISHED.test(words) && { isFinished: true }),
    rest: cut.rest,
  };
}

function fractionOf(part: string): string {
  if (/^t/i.test(part)) return '3/4';
  return /^h/i.test(part) ? '1/2' : '1/4';
}

/** The one length that is said in any of these ways, and the words with a gap for each. */
function take(
  words: string,
  ways: readonly RegExp[],
): { readonly length: SaidLength | undefined; readonly rest: string } {
  const said = new Map<string, SaidLength>();
  let rest = words;
  for (const way of ways) {
    for (const match of [...rest.matchAll(way)].toReversed()) {
      if (!isSquare(rest, match)) continue;
      const length = makeLength(match.slice(3));
      said.set(length.terms.join(), length);
      rest = `${rest.slice(0, match.index)} · ${rest.slice(match.index + match[0].length)}`;
    }
  }
  const [first] = said.values();
  return { length: said.size === 1 ? first : undefined, rest };
}

/** Whether a length stands by itself or beside its like, and is no number of blocks. */
function isSquare(text: string, match: RegExpExecArray): boolean {
  const [whole, beside, by, number = '', unit] = match;
  const isCount = unit === undefined && /^\d+$/.test(number.trim());
  if (isCount || GOES_ON.test(text.slice(match.index + whole.length))) return false;
  if (beside) return /^(?:by|x|×|\*)$/i.test(by ?? '') && beside.trim() === number.trim();
  const before = text.slice(0, match.index);
  const other = LISTED.exec(before);
  return other === null || JOINS.test(before.slice(0, other.index));
}
