import type { FaultCode } from '#core/faults.ts';
import type { Fault } from '#core/outcome.ts';
import { writeParameter } from './write-pointer.ts';

/** What a sentence is made of: the name of the place, what was found, what would have been right. */
interface Words {
  readonly name: string;
  readonly got: string;
  readonly want: string;
}

const LONGEST_ECHO = 40;

/** What cannot stand in a sentence, though a key may have it. */
const UNPRINTED = /[\p{Cc}\p{Cs}\p{Z}]/gu;

/** Kinds of JSON as a fault names them. */
const KINDS: Readonly<Record<string, string>> = {
  list: 'a list',
  group: 'a group of parts',
  true: 'true',
  false: 'false',
  null: 'null',
  Infinity: 'a number too large to hold',
};

const SENTENCES: Readonly<Record<FaultCode, (words: Words) => string>> = {
  'malformed-json': ({ want }) => `The body cannot be read as JSON: send ${want}.`,
  'malformed-query': ({ name, got, want }) =>
    `${name} cannot be read${got && ` (${got})`}: give ${want}.`,
  'wrong-content-type': ({ got, want }) =>
    `The body is sent as ${got || 'nothing in particular'}: send it with Content-Type ${want}.`,
  'body-too-large': ({ want }) => `The body is larger than ${want} bytes: send less.`,
  'too-deep': ({ name, want }) => `${name} is nested deeper than ${want} levels: nest it less.`,
  'not-found': ({ got }) => `There is nothing at ${got}: look at the address again.`,
  'wrong-method': ({ got, want }) =>
    `The method ${got} is not possible at this address: use ${want}.`,
  internal: () => 'The service failed, and it is not your doing: try again, or tell us the id.',
  'unknown-key': ({ name, want }) =>
    `${name} is not known here: ${want ? `use ${want}, or ` : ''}leave it out.`,
  'repeated-key': ({ name }) => `${name} is given more than once: give it once.`,
  missing: ({ name, want }) => `${name} is missing: give it${want && ` as ${want}`}.`,
  'wrong-type': ({ name, got, want }) => `${name} is ${got}: give ${want}.`,
  'not-one-of': ({ name, got, want }) => `${name} is ${got}: give one of ${want}.`,
  empty: ({ name }) => `${name} is empty: give a value or leave it out.`,
  'too-short': ({ name, got, want }) => `${name} is ${got} long: the least is ${want}.`,
  'too-long': ({ name, got, want }) => `${name} is ${got} long: the most is ${want}.`,
  'not-whole': ({ name, got }) => `${name} is ${got}: give a whole number.`,
  'too-small': ({ name, got, want }) =>
    `${name}${got && ` is ${got}, which`} is too small: it needs ${want}.`,
  'too-large': ({ name, got, want }) =>
    `${name}${got && ` is ${got}, which`} is too large: the most is ${want}.`,
  'bad-name': ({ name, got, want }) =>
    `${name} is ${got}, which cannot stand there: write ${want}.`,
  'not-a-length': ({ name, got }) =>
    `${name} is ${got}, which is no length: write it as 8.5, 8 1/2, 21.5 cm or 0.75 yd.`,
  'unclear-comma': ({ name, got }) =>
    `${name} is ${got}, whose comma may part thousands or decimals: write it with a point or without the comma.`,
  'negative-length': ({ name, got }) =>
    `${name} is ${got}, and no length is below nothing: leave out the minus.`,
  'zero-parts': ({ name, got }) =>
    `${name} is ${got}, and nothing is cut into 0 parts: write a fraction such as 8 1/2.`,
  'two-lengths': ({ name, got }) =>
    `${name} is ${got}, which reads as two lengths: give one, and of two terms name both units, as in 4 ft 2 in.`,
  'unknown-unit': ({ name, got }) =>
    `${name} is ${got}, whose unit is not known: use in, ft, yd, mm, cm or m.`,
  'target-unclear': ({ name, want }) => `${name} must say one size, and in one way: give ${want}.`,
  'size-not-in-region': ({ name, got, want }) =>
    `${name} is ${got}, which is not sold there: give one of ${want}.`,
  'seam-eats-face': ({ name, got, want }) =>
    `${name}: an allowance of ${got} at both sides leaves nothing of the block to see; it must be less than ${want}.`,
  'snips-reach-stitching': ({ name, got, want }) =>
    `${name} is ${got}, so the snips would cut the stitching: give less than ${want}.`,
  'roll-too-narrow': ({ name, got, want }) =>
    `${name}: the ${got} that can be used are narrower than one piece, which needs ${want}.`,
  'layers-unfit': ({ name, got, want }) => `${name} are ${got}: a quilt needs ${want}.`,
  'repeated-id': ({ name, got }) =>
    `${name} is ${got}, which another has already: give each its own.`,
  'counts-do-not-sum': ({ name, got, want }) => `${name} add up to ${got}: give ${want}.`,
  'quilt-too-large': ({ name, want }) =>
    `${name} makes a quilt larger than can be planned: ask for ${want}.`,
  'after-unlikely': ({ name, got, want }) =>
    `${name} is ${got}, which is hard to believe: it should come to ${want}; measure again.`,
  'wish-unclear': () => 'The wish names no size: say one as 40 by 50 inches, or queen.',
  'mixed-currencies': ({ name, got, want }) =>
    `${name} is ${got}, but other money is in ${want}: give all of it in one currency.`,
  'price-unclear': ({ name, got, want }) => `${name} say ${got}: give only one of ${want}.`,
  'percents-do-not-sum': ({ name, got, want }) =>
    `The percents in ${name} come to ${got}: give ${want}.`,
};

/** Codes whose `received` is the service's own wording. */
const REWORDED: ReadonlySet<FaultCode> = new Set([
  'wrong-method',
  'seam-eats-face',
  'snips-reach-stitching',
  'roll-too-narrow',
  'layers-unfit',
  'after-unlikely',
  'price-unclear',
]);

/**
 * One fault as an English sentence: what is wrong, with the numbers, and what would make it right.
 *
 * @example
 * describeFault({ code: 'too-large', path: ['spare'], expected: 100, received: 300 }) // => 'spare is 300, which is too large: the most is 100.'
 */
export function describeFault(fault: Fault): string {
  const { code, path, expected, received } = fault;
  const name = path.length === 0 ? 'The input' : writeParameter(path).replace(UNPRINTED, '�');
  const want = typeof expected === 'object' ? listWords(expected) : `${expected ?? ''}`;
  return SENTENCES[code]({ name, got: sayReceived(code, received), want });
}

function listWords(words: readonly string[]): string {
  return words.length < 2
    ? words.join('')
    : `${words.slice(0, -1).join(', ')} or ${words.at(-1) ?? ''}`;
}

/** Text that was sent stands in quotes and is never given back whole; what was worked out stands bare. */
function sayReceived(code: FaultCode, received: Fault['received']): string {
  if (received === undefined) return '';
  const kind = code === 'wrong-type' ? KINDS[received] : undefined;
  if (kind !== undefined) return kind;
  return typeof received === 'number' || REWORDED.has(code) ? `${received}` : quote(received);
}

function quote(sent: string): string {
  const text = sent.replace(/[\p{Cc}\p{Cs}\p{Zl}\p{Zp}]/gu, '�');
  return text.length <= LONGEST_ECHO ? `"${text}"` : `"${text.slice(0, LONGEST_ECHO)}…"`;
}
