import type { Layer, Print, PrintInput } from '../contract.ts';
import { letterOf } from '../layout/letter-of.ts';
import { roundTo } from '../length.ts';
import { SOURCES } from '../sources.ts';
import { PRINTS } from '../tables/defaults.ts';
import { checkIds } from './check-ids.ts';
import { keep, type Reading, readLengthField, readPlain } from './reading.ts';

/**
 * Reads the prints of a layer: a number of them, lettered from A, or each by name.
 * Faults: `repeated-id` for two of one name, `too-small` for shares that are all nought.
 *
 * @param place index of the layer, and its width on the roll in the unit of the request
 */
export function resolvePrints(
  reading: Reading,
  layer: Layer,
  place: { readonly index: number; readonly width: number },
): readonly PrintInput[] {
  const path = ['layers', place.index, 'prints'];
  const usual = layer.role === 'top' ? PRINTS : 1;
  const listed = typeof layer.prints === 'object' ? layer.prints : undefined;
  const count = typeof layer.prints === 'number' ? layer.prints : usual;
  const own: Reading = { ...reading, kept: [], assumptions: [] };
  const given: readonly Print[] = listed ?? letterPrints(count);
  const prints = given.map((print, at) =>
    resolvePrint(own, print, { path: [...path, at], ...place }),
  );
  checkPrints(reading, prints, path);
  const isLettered = own.kept.length === 0 && given.every((print, at) => print.id === letterOf(at));
  if (!isLettered) {
    reading.assumptions.push(...own.assumptions);
    for (const [at, print] of given.entries()) {
      keep(reading, [...path, at, 'id'], print.id);
      const prefix = `${[...path, at].join('.')}.`;
      reading.kept.push(...own.kept.filter(([key]) => key.startsWith(prefix)));
    }
  } else if (given.length !== usual) keep(reading, path, given.length);
  else if (layer.role === 'top') {
    const why = 'Four prints: the fewest that can be laid so that none touches its like';
    reading.assumptions.push({ path: path.join('.'), value: usual, why, source: SOURCES.model });
  }
  return prints;
}

function resolvePrint(
  reading: Reading,
  print: Print,
  place: { readonly path: readonly (string | number)[]; readonly width: number },
): PrintInput {
  const at = (name: string) => [...place.path, name];
  const optional = <T extends number | string>(name: string, given: T | undefined) => {
    if (given === undefined) return {};
    const value = typeof given === 'number' ? roundTo(given, 9) : given;
    keep(reading, at(name), value);
    return { [name]: value };
  };
  const share =
    print.count === undefined
      ? {
          share: readPlain(reading, {
            path: at('share'),
            given: print.share,
            fallback: 1,
            why: `Weight of ${print.id} among the prints`,
          }),
        }
      : optional('count', print.count);
  return {
    id: print.id,
    ...share,
    directional: readPlain(reading, {
      path: at('directional'),
      given: print.directional,
      fallback: false,
    }),
    width: readLengthField(reading, {
      path: at('width'),
      given: print.width,
      limit: 'rollWidth',
      fallback: place.width,
    }),
    ...optional('value', print.value),
    ...optional('color', print.color?.toLowerCase()),
  };
}

function checkPrints(
  reading: Reading,
  prints: readonly PrintInput[],
  path: readonly (string | number)[],
): void {
  checkIds(reading, prints, path);
  const hasCounts = prints.some((print) => print.count !== undefined);
  const total = prints.reduce((sum, print) => sum + (print.share ?? 1), 0);
  if (!hasCounts && total <= 0) {
    reading.faults.push({ code: 'too-small', path, expected: 'at least one share above 0' });
  }
}

function letterPrints(count: number): readonly Print[] {
  return Array.from({ length: count }, (_, index) => ({ id: letterOf(index) }));
}
