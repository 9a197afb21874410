import type { StripGroup, Unit } from '../contract.ts';

import { MILLIMETRES, toMillimetres } from '../length.ts';
import { writeLength } from '../write-length.ts';
import type { CutKind } from './draw-strip.ts';
import type { DrawnCuts } from './drawn-cuts.ts';
import type { DrawnRoll } from './lay-bands.ts';
import { readGroups, readKind } from './read-strips.ts';
import { typesetFractions } from './typeset-fractions.ts';

/** One roll or sheet with what stands above it and the pieces cut from it. */
export interface TitledRoll {
  readonly title: string;
  readonly keys: readonly string[];
  readonly roll: DrawnRoll;
}

/** What the drawing says beside names and figures. */
export interface CutWords {
  readonly across: (width: string) => string;
  readonly wanted: (count: number) => string;
  readonly turned: string;
  readonly alike: (sheets: number) => string;
}

/** The words in English, for pictures that the service sends. */
export const ENGLISH_CUTS: CutWords = {
  across: (width) => `${width} across`,
  wanted: (count) => `${count} wanted`,
  turned: 'dashed: turned a quarter',
  alike: (sheets) => `${sheets} alike`,
};

interface Fabric {
  readonly unit: Unit;
  readonly words: CutWords;
  readonly asked: DrawnCuts['input']['fabrics'][number];
  readonly fabric: DrawnCuts['fabrics'][number];
}

/** The rolls and sheets of one fabric of an answer, in millimetres, those that nothing is cut from left out. */
export function readCuts(
  { input: { unit, fabrics }, fabrics: answered }: DrawnCuts,
  at: number,
  words = ENGLISH_CUTS,
): readonly TitledRoll[] {
  const [asked, fabric] = [fabrics[at], answered[at]];
  if (asked === undefined || fabric === undefined) return [];
  const one = { unit, words, asked, fabric };
  const sheets = (fabric.sheets ?? []).map((sheet) => readSheet(one, sheet));
  return [...(fabric.strips.length > 0 ? [readRoll(one)] : []), ...sheets];
}

function readRoll(one: Fabric): TitledRoll {
  const { unit, words, asked, fabric } = one;
  const width = toMillimetres(fabric.usableWidth, unit);
  const squaring = toMillimetres(asked.squaring, unit);
  const groups = readGroups(fabric.strips, listKinds(one), unit);
  const bought = fabric.buy.filter(({ unit: sold }) => sold !== 'pack');
  const length = bought.reduce((sum, { amount = 0, unit: sold }) => {
    return sold === 'pack' ? sum : sum + amount * MILLIMETRES[sold];
  }, 0);
  const rest = length * (1 - asked.prewash.length / 100) - squaring - heightOf(groups);
  const said = [...bought.map(({ text }) => text), words.across(writeLength(width, unit))];
  return {
    title: typesetFractions([fabric.id, ...said].join(', ')),
    keys: writeKeys(one, fabric.strips),
    roll: { groups, squaring, width, rest: Math.max(0, rest) },
  };
}

function readSheet(
  one: Fabric,
  sheet: NonNullable<Fabric['fabric']['sheets']>[number],
): TitledRoll {
  const { unit, words, asked, fabric } = one;
  const { width = 0, length = 0 } = asked.offers?.find(({ id }) => id === sheet.offer) ?? {};
  const groups = readGroups(sheet.strips, listKinds(one), unit);
  const rest = Math.max(0, toMillimetres(length, unit) - heightOf(groups));
  const alike = sheet.count > 1 ? [words.alike(sheet.count)] : [];
  return {
    title: [fabric.id, sheet.offer, ...alike].filter((word) => word !== '').join(', '),
    keys: writeKeys(one, sheet.strips),
    roll: { groups, squaring: 0, width: toMillimetres(width, unit), rest },
  };
}

function heightOf(groups: TitledRoll['roll']['groups']): number {
  return groups.reduce((sum, strip) => sum + strip.count * strip.length, 0);
}

function listKinds({ asked, unit }: Fabric): ReadonlyMap<string, CutKind> {
  return new Map(
    asked.pieces.map(({ id, width, length }, place) => [
      id,
      readKind({ width, length, unit, place }),
    ]),
  );
}

/** A line for each kind of piece in some strips: its letter, name, sides and count. */
function writeKeys(one: Fabric, strips: readonly StripGroup[]): readonly string[] {
  const kinds = listKinds(one);
  const pieces = strips.flatMap((strip) => strip.pieces);
  return one.asked.pieces
    .filter(({ id }) => pieces.some((piece) => piece.id === id))
    .map(({ id, count }) => {
      const { letter, sides } = kinds.get(id) ?? { letter: '', sides: '' };
      const isTurned = pieces.some((piece) => piece.id === id && piece.turned);
      const mark = isTurned ? `; ${one.words.turned}` : '';
      return `${letter} ${id}, ${sides} ${one.unit}, ${one.words.wanted(count)}${mark}`;
    });
}
