import type { Length, Region, Target, Unit } from '../contract.ts';
import { fromMillimetres, tidy, toMillimetres } from '../length.ts';
import { findSize } from '../tables/sizes.ts';
import { readDrop, type SaidDrop } from './read-drop.ts';
import { readSides } from './read-sides.ts';
import { readSizeName } from './read-size-name.ts';
import { nameUnit, writeSaid } from './said-length.ts';

type Bed = Extract<Target, { bed: unknown }>;

interface Mattress {
  readonly unit: Unit;
  readonly bed: Pick<Bed['bed'], 'width' | 'length'>;
  readonly rest: string;
}

/** A number, perhaps with a unit, right before the word. */
const ENDS_IN_LENGTH = /(?:\d|[\d\s-](?:in|inch|inches|cm|mm|m|ft|feet)|["'”’″′])[\s.-]*$/i;
const STARTS_WITH_LENGTH =
  /^(?:\s+(?:is|of|measures|measuring|size|top|at|about|around))*[^a-z\d]*\d/i;
const JOINS = /(?<![a-z])(?:by|x|×|\*)(?![a-z])/gi;

/**
 * Reads a mattress in a wish, and how far the quilt hangs over it: "mattress 90 by 200 cm, hanging down
 * 30 cm", "queen bed with 15 inch drop". A named bed is the mattress of the table.
 *
 * @param unit the unit of bare numbers where the words name none
 * @returns unit and target; nothing where the words say neither a mattress by its sides nor a drop over
 * one, `unfit` for a drop over what is no bed
 *
 * @example
 * readBed('mattress 90 by 200 cm, hanging down 30 cm', 'in') // => { unit: 'cm', target: { bed: { width: 90, length: 200, drop: 30 } }, rest: 'mattress  · ,  · ' }
 * readBed('queen bed with 15 inch drop', 'in') // => { unit: 'in', target: { bed: { width: 60, length: 80, drop: 15 } }, rest: ' ·  bed with  · ' }
 * readBed('throw with 15 inch drop', 'in') // => 'unfit'
 */
export function readBed(
  words: string,
  unit: Unit,
): { readonly unit: Unit; readonly target: Target; readonly rest: string } | 'unfit' | undefined {
  const said = readDrop(words);
  if (said === undefined) {
    const mattress = findMattress(words, unit);
    const { unit: own, bed, rest } = mattress ?? {};
    return bed && own && { unit: own, target: { bed }, rest: rest ?? '' };
  }
  const lent = nameUnit((said.drop ?? said.footDrop)?.terms[0]?.[1]) ?? unit;
  const sides = readSides(said.rest, lent);
  if (sides !== undefined) {
    const { width, height } = sides.target;
    return cover({ unit: sides.unit, bed: { width, length: height }, rest: sides.rest }, said);
  }
  const named = readSizeName(said.rest, unit);
  if (named === undefined) return readSides(words, unit) === undefined ? 'unfit' : undefined;
  const { rest } = named;
  if ('bed' in named.target) return cover({ unit, bed: named.target.bed, rest }, said);
  return 'size' in named.target ? coverNamed(named.target, unit, { ...said, rest }) : 'unfit';
}

function findMattress(words: string, unit: Unit): Mattress | undefined {
  const at = words.search(/\bmattress/i);
  if (at < 0) return undefined;
  const before = words.slice(0, at);
  const after = words.slice(at).replace(/^\w+/, '');
  const isBefore = ENDS_IN_LENGTH.test(before) && before.match(JOINS)?.length === 1;
  const isAfter = STARTS_WITH_LENGTH.test(after) && !/\d/.test(before);
  const sides = isBefore || isAfter ? readSides(isBefore ? before : after, unit) : undefined;
  return (
    sides && {
      unit: sides.unit,
      bed: { width: sides.target.width, length: sides.target.height },
      rest: isBefore ? `${sides.rest} · ${after}` : `${before} · ${sides.rest}`,
    }
  );
}

/**
 * A drop over the mattress that a name stands for; a cot quilt is as large as the mattress of a cot.
 * A name that its region does not know stays, so that the plan says so.
 */
function coverNamed(target: Extract<Target, { size: unknown }>, unit: Unit, said: SaidDrop) {
  const usual: Region = unit === 'in' ? 'us' : 'eu';
  const row = findSize(target.size, target.region ?? usual);
  if (row === undefined) return { unit, target, rest: said.rest };
  if (row.kind === 'quilt' && target.size !== 'cot') return 'unfit';
  const bed = { width: write(row.width, unit), length: write(row.height, unit) };
  return cover({ unit, bed, rest: said.rest }, said);
}

function write(millimetres: number, unit: Unit): Length {
  const value = fromMillimetres(millimetres, unit);
  return toMillimetres(value, unit) === tidy(millimetres)
    ? value
    : `${fromMillimetres(millimetres, 'cm')} cm`;
}

function cover({ unit, bed, rest }: Mattress, { drop, footDrop }: SaidDrop) {
  const over = {
    ...(drop && { drop: writeSaid(drop, unit) }),
    ...(footDrop && { footDrop: writeSaid(footDrop, unit) }),
  };
  return { unit, target: { bed: { ...bed, ...over } }, rest };
}
