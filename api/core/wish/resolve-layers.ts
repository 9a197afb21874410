import type { Layer, LayerInput, Print, PrintInput, Role } from '../contract.ts';
import { letterOf } from '../layout/letter-of.ts';
import { roundTo } from '../length.ts';
import { SOURCES } from '../sources.ts';
import { DEFAULT_LAYERS, DEFAULTS, PRINTS } from '../tables/defaults.ts';
import { findFabric } from '../tables/fabrics.ts';
import { keep, type Reading, readLengthField, readPlain } from './reading.ts';

const USUAL_FABRIC = {
  top: 'quilting-cotton',
  middle: 'cotton-batting',
  backing: 'flannel',
} as const;

/**
 * Reads the layers of the sandwich, or takes the classic one: a cotton print on flannel.
 * Refused: anything but one top and one backing (`layers-unfit`), prints of one name (`repeated-id`),
 * shares that are all nought (`too-small`).
 */
export function resolveLayers(
  reading: Reading,
  layers: readonly Layer[] | undefined,
): readonly LayerInput[] {
  const given = layers ?? DEFAULT_LAYERS;
  if (layers === undefined) {
    const why = 'A cotton print on flannel';
    const value = 'quilting-cotton, flannel';
    reading.assumptions.push({ path: 'layers', value, why, source: SOURCES.practice });
  }
  const own: Reading = { ...reading, kept: [] };
  const resolved = given.map((layer, index) => resolveLayer(own, layer, index));
  checkRoles(reading, given);
  const isClassic =
    given.length === DEFAULT_LAYERS.length &&
    given.every((layer, index) => layer.role === DEFAULT_LAYERS[index]?.role);
  if (own.kept.length === 0 && isClassic) return resolved;
  for (const [index, layer] of given.entries()) {
    keep(reading, ['layers', index, 'role'], layer.role);
    reading.kept.push(...own.kept.filter(([key]) => key.startsWith(`layers.${index}.`)));
  }
  return resolved;
}

function checkRoles(reading: Reading, layers: readonly Layer[]): void {
  const count = (role: Role) => layers.filter((layer) => layer.role === role).length;
  if (count('top') === 1 && count('backing') === 1) return;
  const received = layers.map((layer) => layer.role).join(', ');
  const expected = 'one top, one backing and at most two middle layers';
  reading.faults.push({ code: 'layers-unfit', path: ['layers'], expected, received });
}

function resolveLayer(reading: Reading, layer: Layer, index: number): LayerInput {
  const at = (...rest: (string | number)[]) => ['layers', index, ...rest];
  const fabric = readPlain(reading, {
    path: at('fabric'),
    given: layer.fabric,
    fallback: USUAL_FABRIC[layer.role],
  });
  const row = findFabric(fabric);
  const defaults = DEFAULTS[reading.unit];
  const width = readLengthField(reading, {
    path: at('width'),
    given: layer.width,
    limit: 'rollWidth',
    fallback: defaults.rollWidth,
    why: `Width on the bolt of the ${layer.role}, at the narrow end of what is sold`,
  });
  const selvage = readLengthField(reading, {
    path: at('selvage'),
    given: layer.selvage,
    limit: 'selvage',
    fallback: defaults.selvage,
    why: `Cut away at each edge of the ${layer.role}`,
  });
  const prints = resolvePrints(reading, layer, { index, width });
  const shrink = resolveShrink(reading, layer, index);
  const number = (name: 'gsm' | 'thickness') =>
    readPlain(reading, {
      path: at(name),
      given: layer[name],
      fallback: row[name],
      why: `${fabric}, ${name === 'gsm' ? 'grams per square metre' : 'millimetres under the foot'}`,
      source: row.source,
    });
  const prewashed = readPlain(reading, {
    path: at('prewashed'),
    given: layer.prewashed,
    fallback: false,
    why: `The ${layer.role} is sewn as it comes from the shop`,
  });
  return {
    role: layer.role,
    fabric,
    prints,
    width,
    selvage,
    ...shrink,
    prewashed,
    gsm: number('gsm'),
    thickness: number('thickness'),
  };
}

function resolveShrink(
  reading: Reading,
  layer: Layer,
  index: number,
): Pick<LayerInput, 'shrink' | 'shrinkWashes'> {
  const fabric = findFabric(layer.fabric ?? USUAL_FABRIC[layer.role]);
  const rate = (name: 'length' | 'width') =>
    readPlain(reading, {
      path: ['layers', index, 'shrink', name],
      given: layer.shrink?.[name],
      fallback: fabric[name].usual,
      why: `${fabric.name} shrinks ${fabric[name].low} to ${fabric[name].high} % at the first wash, ${name === 'length' ? 'along' : 'across'} the roll`,
      source: fabric.source,
    });
  const before = reading.kept.length;
  const length = rate('length');
  const width = rate('width');
  // Both rates stand in the query or neither, since a request gives them together.
  if (reading.kept.length !== before) {
    reading.kept.length = before;
    keep(reading, ['layers', index, 'shrink', 'length'], length);
    keep(reading, ['layers', index, 'shrink', 'width'], width);
  }
  const shrinkWashes = readPlain(reading, {
    path: ['layers', index, 'shrinkWashes'],
    given: layer.shrinkWashes,
    fallback: 1,
  });
  return { shrink: { length, width }, shrinkWashes };
}

function resolvePrints(
  reading: Reading,
  layer: Layer,
  place: { readonly index: number; readonly width: number },
): readonly PrintInput[] {
  const path = ['layers', place.index, 'prints'];
  const usual = layer.role === 'top' ? PRINTS : 1;
  if (layer.prints === undefined && layer.role === 'top') {
    const why = 'Four prints: the fewest that can be laid so that none touches its like';
    reading.assumptions.push({ path: path.join('.'), value: usual, why, source: SOURCES.model });
  }
  const listed = typeof layer.prints === 'object' ? layer.prints : undefined;
  const count = typeof layer.prints === 'number' ? layer.prints : usual;
  const own: Reading = { ...reading, kept: [] };
  const given: readonly Print[] = listed ?? letterPrints(count);
  const prints = given.map((print, at) =>
    resolvePrint(own, print, { path: [...path, at], ...place }),
  );
  checkPrints(reading, given, path);
  const isLettered = own.kept.length === 0 && given.every((print, at) => print.id === letterOf(at));
  if (!isLettered) {
    for (const [at, print] of given.entries()) {
      keep(reading, [...path, at, 'id'], print.id);
      const prefix = `${[...path, at].join('.')}.`;
      reading.kept.push(...own.kept.filter(([key]) => key.startsWith(prefix)));
    }
  } else if (given.length !== usual) keep(reading, path, given.length);
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
      ? { share: readPlain(reading, { path: at('share'), given: print.share, fallback: 1 }) }
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
    ...optional('color', print.color),
  };
}

function checkPrints(
  reading: Reading,
  prints: readonly Print[],
  path: readonly (string | number)[],
): void {
  const seen = new Set<string>();
  for (const [at, print] of prints.entries()) {
    if (seen.has(print.id)) {
      reading.faults.push({ code: 'repeated-id', path: [...path, at, 'id'], received: print.id });
    }
    seen.add(print.id);
  }
  const hasCounts = prints.some((print) => print.count !== undefined);
  const total = prints.reduce((sum, print) => sum + (print.share ?? 1), 0);
  if (!hasCounts && total <= 0) {
    reading.faults.push({ code: 'too-small', path, expected: 'at least one share above 0' });
  }
}

function letterPrints(count: number): readonly Print[] {
  return Array.from({ length: count }, (_, index) => ({ id: letterOf(index) }));
}
