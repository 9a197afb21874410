import { makeLength, NUMBER, type SaidLength, START, UNIT } from './said-length.ts';

const LENGTH = String.raw`(${NUMBER})[\s-]*(${UNIT})?`;
const HANG = `(?:drop|overhang|hang(?:s|ing)?)`;
const FILL = String.raw`(?:\s+(?:down|over|of|is|by|about|around|at|to|on|the|each|both|sides?))*[\s:=]*`;
const FOOT = new RegExp(
  String.raw`${START}${LENGTH}[\s-]*(?:of\s+)?(?:${HANG}\s*)?(?:down\s+)?(?:at|on|over)\s+the\s+(?:foot|end|bottom)\b`,
  'gi',
);
const SIDES = [
  new RegExp(String.raw`${START}${LENGTH}[\s-]*(?:of\s+)?(?:side[\s-]+)?${HANG}\b`, 'gi'),
  new RegExp(String.raw`\b${HANG}\b${FILL}${LENGTH}`, 'gi'),
];
/** The second of two sides, such as "by 80 drop". */
const JOINED = /(?:\bby|\d\S*\s*[x×*])[\s-]*$/i;
/** The first of two sides, such as "hanging, 40 by 50", or a number of blocks. */
const GOES_ON = /^(?:[\d.,/]*\d|[\s-]*(?:(?:by|x|×|\*)[\s-]*\d|blocks?\b|squares?\b))/i;

/** How far a quilt is to hang over a mattress, and the words without that. */
export interface SaidDrop {
  readonly drop?: SaidLength;
  readonly footDrop?: SaidLength;
  readonly rest: string;
}

/**
 * Reads in a wish how far the quilt hangs down: "with a 15 inch drop", "hanging down 30 cm",
 * "8 inches at the foot".
 *
 * @returns nothing where the words say no such length
 *
 * @example
 * readDrop('queen, hanging down 30 cm') // => { drop: { terms: [['30', 'cm']] }, rest: 'queen,  · ' }
 * readDrop('a wall hanging 40 by 50') // => undefined
 */
export function readDrop(words: string): SaidDrop | undefined {
  const foot = take(words, FOOT);
  const [first, second] = SIDES;
  const rest = foot?.rest ?? words;
  const sides = (first && take(rest, first)) ?? (second && take(rest, second));
  if (foot === undefined && sides === undefined) return undefined;
  return {
    ...(sides && { drop: sides.length }),
    ...(foot && { footDrop: foot.length }),
    rest: sides?.rest ?? rest,
  };
}

function take(
  words: string,
  way: RegExp,
): { readonly length: SaidLength; readonly rest: string } | undefined {
  for (const match of words.matchAll(way)) {
    const [whole, number, unit] = match;
    const before = words.slice(0, match.index);
    const after = words.slice(match.index + whole.length);
    if (JOINED.test(before) || GOES_ON.test(after)) continue;
    return { length: makeLength([number, unit]), rest: `${before} · ${after}` };
  }
  return undefined;
}
