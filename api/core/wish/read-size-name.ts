import type { Region, SizeName, Target, Unit } from '../contract.ts';
import { findSize, SIZES } from '../tables/sizes.ts';

/** Words of the trade for the names in the table. */
const ALIASES: Readonly<Record<string, SizeName>> = {
  crib: 'cot',
  baby: 'cot',
  couch: 'throw',
  sofa: 'throw',
  superking: 'super-king',
  'cal king': 'california-king',
};

/** Names that are plain adjectives too: another name beside them says more. */
const WEAK: ReadonlySet<SizeName> = new Set(['full', 'double', 'single']);

/** Capitals only, since "tell us" names no country. */
const REGIONS: readonly (readonly [RegExp, Region])[] = [
  [/\b(UK|uk|[Bb]ritish|[Ee]nglish)\b/, 'uk'],
  [/\b(EU|eu|[Ee]uropean)\b/, 'eu'],
  [/\b(USA?|U\.S\.|usa|[Aa]merican)(?![A-Za-z])/, 'us'],
];

/** A twin mattress that is longer than a twin: 38 by 80 in (from memory; trade pages give 38 to 39). */
const LONG_TWIN = /\btwin[ -]?(xl|extra[ -]long|long)\b/i;

interface Mention {
  readonly size: SizeName;
  readonly at: number;
  readonly length: number;
}

/**
 * Reads the name of a size in a wish: "queen", "a super king for the UK", "baby quilt".
 * The first name counts; two sizes with "or" between them are no answer. Where no region is named and
 * the region that measures in `unit` has no such size, it is one that has.
 *
 * @param unit of the request
 * @returns unit and target; nothing where no size is named
 *
 * @example
 * readSizeName('queen', 'in') // => { unit: 'in', target: { size: 'queen' }, rest: ' · ' }
 * readSizeName('super king', 'in') // => { unit: 'in', target: { size: 'super-king', region: 'uk' }, rest: ' · ' }
 * readSizeName('throw or lap', 'in') // => undefined
 */
export function readSizeName(
  words: string,
  unit: Unit,
): { readonly unit: Unit; readonly target: Target; readonly rest: string } | undefined {
  if (LONG_TWIN.test(words)) {
    const rest = words.replace(LONG_TWIN, ' · ');
    return { unit, target: { bed: { width: '38 in', length: '80 in' } }, rest };
  }
  const found = listMentions(words.toLowerCase());
  const strong = found.filter(({ size }) => !WEAK.has(size));
  const mentions = strong.length > 0 ? strong : found;
  const [first, second] = mentions;
  if (first === undefined) return undefined;
  const isChoice =
    second !== undefined &&
    second.size !== first.size &&
    /\bor\b/i.test(words.slice(first.at, second.at));
  if (isChoice) return undefined;
  const named = REGIONS.find(([pattern]) => pattern.test(words));
  const region = named?.[1] ?? findRegion(first.size, unit);
  const same = mentions.filter(({ size }) => size === first.size);
  const rest = same.reduceRight((text, { at, length }) => gap(text, at, length), words);
  const target = { size: first.size, ...(region !== undefined && { region }) };
  return { unit, target, rest: named === undefined ? rest : rest.replace(named[0], ' · ') };
}

function gap(text: string, at: number, length: number): string {
  return `${text.slice(0, at)} · ${text.slice(at + length)}`;
}

/** Every size named, in the order of the words; a name inside a longer one does not count. */
function listMentions(words: string): readonly Mention[] {
  const names: readonly (readonly [string, SizeName])[] = [
    ...Object.entries(ALIASES),
    ...[...new Set(SIZES.map(({ name }) => name))].map((name) => [name, name] as const),
  ];
  const spelt = names
    .map(([word, size]) => ({ size, spelling: word.replace(/[- ]/g, '[- ]?') }))
    .toSorted((one, other) => other.spelling.length - one.spelling.length);
  let rest = words;
  const mentions: Mention[] = [];
  for (const { size, spelling } of spelt) {
    const pattern = new RegExp(`(?<![a-z])${spelling}(?![a-z])`, 'g');
    rest = rest.replace(pattern, (word, at: number) => {
      mentions.push({ size, at, length: word.length });
      return '#'.repeat(word.length);
    });
  }
  return mentions.toSorted((one, other) => one.at - other.at);
}

function findRegion(size: SizeName, unit: Unit): Region | undefined {
  const usual: Region = unit === 'in' ? 'us' : 'eu';
  if (findSize(size, usual) !== undefined) return undefined;
  return SIZES.find(({ name }) => name === size)?.region;
}
