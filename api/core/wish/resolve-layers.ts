import type { Layer, LayerInput, Role } from '../contract.ts';
import { SOURCES } from '../sources.ts';
import { DEFAULT_LAYERS, DEFAULTS } from '../tables/defaults.ts';
import { findFabric } from '../tables/fabrics.ts';
import { keep, type Reading, readLengthField, readPlain } from './reading.ts';
import { resolvePrints } from './resolve-prints.ts';

const USUAL_FABRIC = {
  top: 'quilting-cotton',
  middle: 'cotton-batting',
  backing: 'flannel',
} as const;

/**
 * Reads the layers of the sandwich, or takes the classic one: a cotton print on flannel.
 * Refused: anything but one top and one backing (`layers-unfit`).
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
