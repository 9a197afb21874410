import type { Unit } from './contract.ts';
import { MILLIMETRES, tidy } from './length.ts';

type NamedUnit = keyof typeof MILLIMETRES;

/** Units as they are written in English, German, Spanish and French. */
const UNIT_WORDS: Readonly<Record<NamedUnit, string>> = {
  in: 'in ins inch inches " zoll pulg pulgada pulgadas po pouce pouces',
  ft: "ft foot feet ' fuß fuss pie pies pied pieds",
  yd: 'yd yds yard yards yarda yardas verge verges',
  mm: 'mm millimetre millimetres millimeter millimeters milímetro milímetros milimetro milimetros millimètre millimètres',
  cm: 'cm cms centimetre centimetres centimeter centimeters zentimeter centímetro centímetros centimetro centimetros centimètre centimètres',
  m: 'm metre metres meter meters metro metros mètre mètres',
};

const UNITS: ReadonlyMap<string, NamedUnit> = new Map(
  (Object.keys(UNIT_WORDS) as NamedUnit[]).flatMap((unit) =>
    UNIT_WORDS[unit].split(' ').map((word) => [word, unit] as const),
  ),
);

/** A fraction, with or without a whole part. */
const FRACTION = /^(?:(\d+)(?: |- ?))?(\d+) ?\/ ?(\d+)$/;
const DECIMAL = /^(?:\d+(?:[.,]\d*)?|[.,]\d+)$/;
/** Thousands set off by one sign, and either a decimal by the other or a second set of them: nothing else is meant. */
const GROUPED =
  /^[1-9]\d{0,2}(?:(?:\.\d{3})+,\d+|(?:,\d{3})+\.\d+|(?:\.\d{3}){2,}|(?:,\d{3}){2,})$/;
/** A term, its unit, and what may stand before the next term. */
const TERM_WITH_UNIT = /([\d.,/ -]*[\d.,]) ?(?:(\p{L}+)\.?|(['"]))?(?:$|(?:,? |-)?(?=[.,]?\d))/guy;

/**
 * Adds up the terms of a length in plain signs (`write-plain.ts`): `4' 2"`, `8 1/2 in`, `21,5`. Each must name a
 * smaller unit than the one before it, and one alone may do without.
 *
 * @param text as `writePlain` writes it
 * @param unit the unit of a bare number
 * @returns millimetres; nothing where the text is no length
 *
 * @example
 * readTerms('4\' 2"', 'cm') // => 1270
 * readTerms('1.250,5 mm', 'cm') // => 1250.5
 * readTerms('8 ells', 'in') // => undefined
 */
export function readTerms(text: string, unit: Unit): number | undefined {
  TERM_WITH_UNIT.lastIndex = 0;
  let total = 0;
  let size = Number.POSITIVE_INFINITY;
  let terms = 0;
  while (TERM_WITH_UNIT.lastIndex < text.length) {
    const match = TERM_WITH_UNIT.exec(text);
    if (match === null) return undefined;
    const word = match[2] ?? match[3];
    if (word === undefined && terms > 0) return undefined;
    const named = word === undefined ? unit : UNITS.get(word);
    const value = readNumber((match[1] ?? '').trim());
    if (named === undefined || value === undefined || MILLIMETRES[named] >= size) return undefined;
    size = MILLIMETRES[named];
    total += value * size;
    terms += 1;
  }
  return terms > 0 && Number.isFinite(total) ? tidy(total) : undefined;
}

function readNumber(text: string): number | undefined {
  const [, whole = '0', above, below] = FRACTION.exec(text) ?? [];
  if (below !== undefined) {
    const denominator = Number(below);
    return denominator === 0 ? undefined : Number(whole) + Number(above) / denominator;
  }
  if (DECIMAL.test(text)) return Number(text.replace(',', '.'));
  return GROUPED.test(text) ? readGrouped(text) : undefined;
}

/** With both signs in it, the last one is that of the decimal; with one alone, it sets off thousands. */
function readGrouped(text: string): number {
  const [thousands, decimal] = /\..*,/.test(text) ? ['.', ','] : [',', '.'];
  const isMixed = text.includes('.') && text.includes(',');
  return Number(
    isMixed ? text.replaceAll(thousands, '').replace(decimal, '.') : text.replace(/[.,]/g, ''),
  );
}
