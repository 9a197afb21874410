import type { Length, Region, SizeName, Target, Unit } from '../contract.ts';
import { SIZE_LIMITS } from '../limits.ts';
import { fail, type Outcome, succeed } from '../outcome.ts';
import { readLength } from '../read-length.ts';
import { SIZES } from '../tables/sizes.ts';

/** What was understood of a wish in words. */
export interface ReadWish {
  readonly unit: Unit;
  readonly target: Target;
}

const UNIT = `(?:in(?:ch(?:es)?)?|cm|centimet(?:er|re)s?|mm|met(?:er|re)s?|m|ft|foot|feet|yd|yards?|["”″'’′])`;
const NUMBER = String.raw`(?:\d+[ -]\d+\/\d+|\d+\/\d+|\d+(?:[.,]\d+)?\s?[½¼¾⅛⅜⅝⅞⅓⅔]?|[½¼¾⅛⅜⅝⅞⅓⅔])`;
const SIDES = new RegExp(
  String.raw`(${NUMBER})\s*(${UNIT})?\s*(?:by|x|×|\*|and)\s*(${NUMBER})\s*(${UNIT})?(?![\w/])`,
  'i',
);

/** Words of the trade for the names in the table. */
const NAMES: Readonly<Record<string, SizeName>> = {
  crib: 'cot',
  baby: 'cot',
  couch: 'throw',
  sofa: 'throw',
  'super king': 'super-king',
  'california king': 'california-king',
};

const REGIONS: readonly (readonly [RegExp, Region])[] = [
  [/\b(uk|british|english)\b/i, 'uk'],
  [/\b(eu|european)\b/i, 'eu'],
  [/\b(us|american)\b/i, 'us'],
];

/**
 * Reads a wish in plain words: two lengths with "by" or "x" between them, else columns and rows of
 * blocks, else the name of a size. Two lengths win over a name, since they say more.
 *
 * @param text at most 300 characters
 * @param unit the unit of bare numbers where the words name none
 * @returns unit and target for a request; fault `wish-unclear` with an empty path
 *
 * @example
 * readWish('a throw for the reading room, about 40 by 50 inches', 'cm') // => { ok: true, value: { unit: 'in', target: { width: 40, height: 50 } } }
 * readWish('queen', 'in') // => { ok: true, value: { unit: 'in', target: { size: 'queen' } } }
 * readWish('6 by 8 blocks', 'in') // => { ok: true, value: { unit: 'in', target: { columns: 6, rows: 8 } } }
 */
export function readWish(text: string, unit: Unit): Outcome<ReadWish> {
  const words = text.slice(0, SIZE_LIMITS.wishText);
  const target = readGrid(words);
  if (target !== undefined) return succeed({ unit, target });
  const wish = readSides(words, unit) ?? readName(words, unit);
  return wish === undefined
    ? fail([{ code: 'wish-unclear', path: [], received: words }])
    : succeed(wish);
}

function readGrid(words: string): Target | undefined {
  const match = /(\d{1,3})\s*(?:by|x|×)\s*(\d{1,3})\s*blocks/i.exec(words);
  return match === null ? undefined : { columns: Number(match[1]), rows: Number(match[2]) };
}

function readSides(words: string, unit: Unit): ReadWish | undefined {
  const match = SIDES.exec(words);
  if (match === null) return undefined;
  const [, width = '', ownUnit, height = '', lastUnit] = match;
  const firstName = nameUnit(ownUnit ?? lastUnit);
  const lastName = nameUnit(lastUnit ?? ownUnit);
  const named = unitOf(lastName ?? firstName) ?? unit;
  return {
    unit: named,
    target: {
      width: writeSide(width.trim(), firstName, named),
      height: writeSide(height.trim(), lastName, named),
    },
  };
}

/** A number where the unit is the request's own, else text with its unit. */
function writeSide(number: string, name: string | undefined, unit: Unit): Length {
  if (name !== undefined && name !== unit) return `${number} ${name}`;
  const plain = Number(number.replace(',', '.'));
  return Number.isNaN(plain) || !readLength(number, unit).ok ? number : plain;
}

function nameUnit(word: string | undefined): string | undefined {
  const lower = word?.toLowerCase();
  if (lower === undefined) return undefined;
  if (/^(in|["”″])/.test(lower)) return 'in';
  if (/^(f|['’′])/.test(lower)) return 'ft';
  if (lower.startsWith('y')) return 'yd';
  if (lower.startsWith('c')) return 'cm';
  return lower === 'mm' ? 'mm' : 'm';
}

function unitOf(name: string | undefined): Unit | undefined {
  if (name === undefined) return undefined;
  return name === 'in' || name === 'ft' || name === 'yd' ? 'in' : 'cm';
}

function readName(words: string, unit: Unit): ReadWish | undefined {
  const lower = words.toLowerCase();
  const names = [...new Set(SIZES.map((row) => row.name))].toSorted(
    (one, other) => other.length - one.length,
  );
  const alias = Object.keys(NAMES).find((name) => hasWord(lower, name));
  const size = alias === undefined ? names.find((name) => hasWord(lower, name)) : NAMES[alias];
  if (size === undefined) return undefined;
  const region = REGIONS.find(([pattern]) => pattern.test(words))?.[1];
  return { unit, target: { size, ...(region !== undefined && { region }) } };
}

function hasWord(words: string, name: string): boolean {
  return new RegExp(`(^|[^a-z])${name}([^a-z]|$)`).test(words);
}
