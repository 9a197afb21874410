import { NUMBER_LIMITS } from '../limits.ts';

/** What a wish says of layers, prints and the wash, and the words without that. */
export interface SaidMaking {
  readonly prints?: number;
  /** Whether there is a layer between top and backing. */
  readonly middle?: boolean;
  readonly washes?: number;
  readonly rest: string;
}

const WORDS = [
  ...['one', 'two', 'three', 'four', 'five', 'six', 'seven', 'eight', 'nine', 'ten', 'eleven'],
  'twelve',
];
/** A count of its own: no part of a longer number, and no second side of a pair. */
const COUNT = String.raw`(?<![\d.,/\p{L}-])(?<!(?:\bby|\bto|\bor|\d|[x×*–])[\s-]*)(\d{1,3}|${WORDS.join('|')})`;
const END = String.raw`(?!\p{L})`;
const KINDS = String.raw`(?:(?:different|various|flannel|cotton|distintos|verschiedene|différents?)\s+)?`;
const PRINTS = new RegExp(
  String.raw`${COUNT}[\s-]+${KINDS}(?:prints?|fabrics|estampados?|telas|stoffen?|drucken?|imprimés|tissus)${END}`,
  'giu',
);
const LAYERS = new RegExp(
  String.raw`${COUNT}[\s-]*(?:layers?|layered|capas|lagen|schichten|couches|épaisseurs)${END}`,
  'giu',
);
const TIMES = String.raw`(once|twice|${COUNT}\s*(?:times|x))`;
const WASHED = new RegExp(String.raw`(?<!\p{L})washed\s+${TIMES}${END}`, 'giu');
const WASHES = new RegExp(
  String.raw`(?:(?<!\p{L})(?:after|in)\s+)?${COUNT}\s*(?:washes|washings)${END}`,
  'giu',
);
/** The size after the wash is the usual one, so that this asks for nothing. */
const USUAL =
  /(?<![\p{L}-])(?<!\b(?:not|never)\s+)(?:(?:when|once|as)\s+)?washed(?!\p{L})|(?<!\p{L})after\s+(?:the\s+|its\s+)?(?:first\s+)?wash(?:ing)?(?!\p{L})/giu;
const BATTING =
  /(?<![\p{L}-])(?:(no|without)\s+(?:any\s+)?)?(?:with\s+)?(?:(?:an?|the)\s+)?(?:(?:cotton|thin)\s+)?(?:batting|wadding|middle\s+layer)(?![\p{L}-])/giu;
/** Where one of these stands, what is said of batting may mean the contrary, so that nothing is taken. */
const DOUBT =
  /(?<!\p{L})(?:not|never|skip|instead|none|free|w\/o|neither|nor|\p{L}+n[’']t)(?!\p{L})/iu;

/**
 * Reads what a wish says of how the quilt is made: "6 prints", "three layers", "no batting", "washed
 * twice". A count beyond its limit, a number of layers other than two or three, and what is said twice
 * in two ways stay in the words.
 *
 * @example
 * readMaking('twin, 3 layers, 6 prints, washed twice') // => { prints: 6, middle: true, washes: 2, rest: 'twin,  · ,  · ,  · ' }
 * readMaking('lap, 40 layers') // => { rest: 'lap, 40 layers' }
 */
export function readMaking(words: string): SaidMaking {
  const prints = take(words, [PRINTS], within('prints'));
  const layers = take(prints.rest, [LAYERS], (text) => readCount(text, { least: 2, most: 3 }));
  const washes = take(layers.rest, [WASHED, WASHES], within('washes'));
  const batting = take(washes.rest, [BATTING], (no) =>
    DOUBT.test(words) ? undefined : no === undefined ? 1 : 0,
  );
  const said = layers.value === undefined ? batting.value : layers.value - 2;
  const isAgreed = batting.value === undefined || said === batting.value;
  return {
    ...(prints.value !== undefined && { prints: prints.value }),
    ...(said !== undefined && { middle: said === 1 }),
    ...(washes.value !== undefined && { washes: washes.value }),
    rest: (isAgreed ? batting.rest : washes.rest).replace(USUAL, ' · '),
  };
}

function within(name: 'prints' | 'washes') {
  return (text: string | undefined) => readCount(text, NUMBER_LIMITS[name]);
}

function readCount(
  text: string | undefined,
  { least, most }: { readonly least: number; readonly most: number },
): number | undefined {
  const word = (text ?? '').toLowerCase().replace(/\s*times$|(?<=\d)\s*x$/, '');
  const at = ['', ...WORDS].indexOf(word);
  const count = word === 'once' ? 1 : word === 'twice' ? 2 : at > 0 ? at : Number(word);
  return Number.isInteger(count) && count >= least && count <= most ? count : undefined;
}

/** The one value that is said in any of these ways, and the words with a gap for each time; of two that differ none. */
function take(
  words: string,
  ways: readonly RegExp[],
  read: (text: string | undefined) => number | undefined,
): { readonly value?: number; readonly rest: string } {
  const values = new Set<number>();
  let rest = words;
  for (const way of ways) {
    rest = rest.replace(way, (whole: string, text: string | undefined) => {
      const value = read(text);
      if (value === undefined) return whole;
      values.add(value);
      return ' · ';
    });
  }
  const [value] = values;
  return values.size === 1 && value !== undefined ? { value, rest } : { rest: words };
}
