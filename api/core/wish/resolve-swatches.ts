import type { Swatch, SwatchInput } from '../contract.ts';
import { roundTo } from '../length.ts';
import type { Path } from '../outcome.ts';
import { FABRICS } from '../tables/fabrics.ts';
import { isSound, keep, type Reading, readLengthField, readPlain } from './reading.ts';

/** Names of swatches that mean something here: a fabric of the table, or a quilted test block. */
const KNOWN_NAMES: ReadonlySet<string> = new Set(['sandwich', ...FABRICS.map(({ name }) => name)]);

/**
 * Reads measured swatches. Refuses one that came out more than twice or less than half as long as it
 * went in, or whose diagonals are that far apart (`after-unlikely`): a slip of the pen or the unit.
 */
export function resolveSwatches(
  reading: Reading,
  swatches: readonly Swatch[] | undefined,
): readonly SwatchInput[] {
  return (swatches ?? []).map((swatch, index) => resolveSwatch(reading, swatch, index));
}

function resolveSwatch(reading: Reading, swatch: Swatch, index: number): SwatchInput {
  const at = (...names: string[]) => ['swatches', index, ...names];
  const fabric = readPlain(reading, {
    path: at('fabric'),
    given: swatch.fabric === undefined ? undefined : readName(swatch.fabric),
    fallback: 'cloth',
    why: 'A swatch without the name of a fabric tells of itself, not of a layer of the quilt',
  });
  keep(reading, at('direction'), swatch.direction);
  const side = (name: 'before' | 'after') =>
    readLengthField(reading, { path: at(name), given: swatch[name], limit: 'benchmark' });
  const before = side('before');
  const after = side('after');
  checkLikely(reading, { path: at('after'), from: at('before') }, [before, after]);
  const washes = readPlain(reading, {
    path: at('washes'),
    given: swatch.washes,
    fallback: 1,
    why: 'The swatch was measured after one wash',
  });
  const diagonals = resolveDiagonals(reading, swatch, at('diagonals'));
  return { fabric, direction: swatch.direction, before, after, washes, ...diagonals };
}

function resolveDiagonals(
  reading: Reading,
  swatch: Swatch,
  path: Path,
): Pick<SwatchInput, 'diagonals'> {
  if (swatch.diagonals === undefined) return {};
  const { diagonals } = swatch;
  const side = (name: 'ac' | 'bd') =>
    readLengthField(reading, { path: [...path, name], given: diagonals[name], limit: 'benchmark' });
  const ac = side('ac');
  const bd = side('bd');
  checkLikely(reading, { path: [...path, 'bd'], from: [...path, 'ac'] }, [ac, bd]);
  return { diagonals: { ac, bd } };
}

function checkLikely(
  reading: Reading,
  place: { readonly path: Path; readonly from: Path },
  [first, second]: readonly [number, number],
): void {
  if (!isSound(reading, place.from, place.path)) return;
  if (second <= 2 * first && second >= first / 2) return;
  reading.faults.push({
    code: 'after-unlikely',
    path: place.path,
    expected: `${roundTo(first / 2, 4)} to ${roundTo(2 * first, 4)} ${reading.unit}`,
    received: `${second} ${reading.unit}`,
  });
}

/** The name as given, or the name of the table that it spells in its own way. */
function readName(name: string): string {
  const known = name.trim().toLowerCase().replace(/\s+/g, '-');
  return KNOWN_NAMES.has(known) ? known : name;
}
