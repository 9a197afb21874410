import type { Region, SizeName } from '../contract.ts';
import { SOURCES } from '../sources.ts';

/** A quilt or a mattress that has a name; sides in millimetres. */
export interface NamedSize {
  readonly name: SizeName;
  readonly region: Region;
  /** A bed's sides are those of the mattress top; a quilt's are those of the quilt itself. */
  readonly kind: 'bed' | 'quilt';
  readonly width: number;
  readonly height: number;
  readonly source: string;
}

const IN = 25.4;

/** A cot quilt covers the floor of a full-size crib; it is for play, not for sleep. */
const COT = { width: 28 * IN, height: 52.375 * IN, source: SOURCES.crib };
const LAP = { width: 36 * IN, height: 48 * IN, source: SOURCES.practice };
const THROW = { width: 50 * IN, height: 60 * IN, source: SOURCES.practice };
const LAP_CM = { width: 900, height: 1200, source: SOURCES.practice };
const THROW_CM = { width: 1300, height: 1500, source: SOURCES.practice };

export const SIZES: readonly NamedSize[] = [
  quilt('cot', 'us', COT),
  quilt('lap', 'us', LAP),
  quilt('throw', 'us', THROW),
  bed('twin', 'us', 38 * IN, 75 * IN),
  bed('single', 'us', 38 * IN, 75 * IN),
  bed('full', 'us', 54 * IN, 75 * IN),
  bed('double', 'us', 54 * IN, 75 * IN),
  bed('queen', 'us', 60 * IN, 80 * IN),
  bed('king', 'us', 76 * IN, 80 * IN),
  bed('california-king', 'us', 72 * IN, 84 * IN),
  quilt('cot', 'uk', COT),
  quilt('lap', 'uk', LAP_CM),
  quilt('throw', 'uk', THROW_CM),
  bed('twin', 'uk', 900, 1900),
  bed('single', 'uk', 900, 1900),
  bed('full', 'uk', 1350, 1900),
  bed('double', 'uk', 1350, 1900),
  bed('king', 'uk', 1500, 2000),
  bed('super-king', 'uk', 1800, 2000),
  quilt('cot', 'eu', COT),
  quilt('lap', 'eu', LAP_CM),
  quilt('throw', 'eu', THROW_CM),
  bed('twin', 'eu', 900, 2000),
  bed('single', 'eu', 900, 2000),
  bed('full', 'eu', 1400, 2000),
  bed('double', 'eu', 1400, 2000),
  bed('queen', 'eu', 1600, 2000),
  bed('king', 'eu', 1800, 2000),
];

interface Sides {
  readonly width: number;
  readonly height: number;
  readonly source: string;
}

function quilt(name: SizeName, region: Region, sides: Sides): NamedSize {
  return { name, region, kind: 'quilt', ...sides };
}

function bed(name: SizeName, region: Region, width: number, height: number): NamedSize {
  const source = { us: SOURCES.bedsUs, uk: SOURCES.bedsUk, eu: SOURCES.bedsEu }[region];
  return { name, region, kind: 'bed', width, height, source };
}

/**
 * The named size of a region, or nothing where the region has none of that name.
 *
 * @example
 * findSize('queen', 'us')?.width // => 1524
 * findSize('queen', 'uk') // => undefined
 */
export function findSize(name: SizeName, region: Region): NamedSize | undefined {
  return SIZES.find((row) => row.name === name && row.region === region);
}

/**
 * The names that a region knows, in the order of the table.
 *
 * @example
 * listSizes('uk').includes('super-king') // => true
 */
export function listSizes(region: Region): readonly SizeName[] {
  return SIZES.filter((row) => row.region === region).map((row) => row.name);
}
