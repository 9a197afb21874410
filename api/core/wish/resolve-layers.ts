import type { Assumption, PlanLayer, PlanLayerInput, Role } from '../contract.ts';
import { roundTo } from '../length.ts';
import { SOURCES } from '../sources.ts';
import { DEFAULT_LAYERS, DEFAULTS } from '../tables/defaults.ts';
import { type Fabric, findFabric } from '../tables/fabrics.ts';
import { USUAL_FABRICS } from '../tables/usual-fabrics.ts';
import { isMeasured } from '../wash/shrink-quilt.ts';
import { keep, type Reading, readLengthField, readPlain } from './reading.ts';
import { resolveOffers } from './resolve-offers.ts';
import { resolvePrints } from './resolve-prints.ts';

/**
 * Reads the layers of the sandwich, or takes the classic one: a cotton print on flannel.
 * Refused: anything but one top and one backing (`layers-unfit`).
 */
export function resolveLayers(
  reading: Reading,
  layers: readonly PlanLayer[] | undefined,
): readonly PlanLayerInput[] {
  const given = layers ?? DEFAULT_LAYERS;
  const own: Reading = { ...reading, kept: [], assumptions: [] };
  const resolved = given.map((layer, index) => resolveLayer(own, layer, index));
  checkRoles(reading, given);
  const isClassic =
    given.length === DEFAULT_LAYERS.length &&
    given.every((layer, index) => layer.role === DEFAULT_LAYERS[index]?.role);
  if (own.kept.length === 0 && isClassic) {
    const why = 'A cotton print on flannel';
    const value = 'quilting-cotton, flannel';
    reading.assumptions.push({ path: 'layers', value, why, source: SOURCES.practice });
    const isInside = ({ path }: Assumption) => !path.endsWith('.fabric');
    reading.assumptions.push(...own.assumptions.filter(isInside));
    return resolved;
  }
  reading.assumptions.push(...own.assumptions);
  for (const [index, layer] of given.entries()) {
    keep(reading, ['layers', index, 'role'], layer.role);
    reading.kept.push(...own.kept.filter(([key]) => key.startsWith(`layers.${index}.`)));
  }
  return resolved;
}

function checkRoles(reading: Reading, layers: readonly PlanLayer[]): void {
  const count = (role: Role) => layers.filter((layer) => layer.role === role).length;
  if (count('top') === 1 && count('backing') === 1) return;
  const received = layers.map((layer) => layer.role).join(', ');
  const expected = 'one top, one backing and at most two middle layers';
  reading.faults.push({ code: 'layers-unfit', path: ['layers'], expected, received });
}

function resolveLayer(reading: Reading, layer: PlanLayer, index: number): PlanLayerInput {
  const at = (...rest: (string | number)[]) => ['layers', index, ...rest];
  const fabric = readPlain(reading, {
    path: at('fabric'),
    given: layer.fabric,
    fallback: USUAL_FABRICS[layer.role],
    why: `Usual for the ${layer.role}`,
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
  const shrink = resolveShrink(reading, layer, { index, fabric: row });
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
  const read = {
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
  if (layer.offers === undefined) return read;
  const asked = { offers: layer.offers, step: defaults.step, why: 'Shops sell by this step' };
  return { ...read, offers: resolveOffers(reading, asked, at('offers')) };
}

/**
 * Reads what a layer shrinks by, or takes it from the table of fabrics. Both rates stand in the query
 * or neither, since a request gives them together; a wash count without rates says nothing, since the
 * table speaks of the first wash.
 */
function resolveShrink(
  reading: Reading,
  layer: PlanLayer,
  place: { readonly index: number; readonly fabric: Fabric },
): Pick<PlanLayerInput, 'shrink' | 'shrinkWashes'> {
  const { index, fabric } = place;
  const { length = fabric.length.usual, width = fabric.width.usual } = layer.shrink ?? {};
  const shrink = { length: roundTo(length, 9), width: roundTo(width, 9) };
  const shrinkWashes = layer.shrink === undefined ? 1 : (layer.shrinkWashes ?? 1);
  const at = (name: string) => ['layers', index, name];
  if (isMeasured({ shrink, shrinkWashes }, fabric)) {
    keep(reading, [...at('shrink'), 'length'], shrink.length);
    keep(reading, [...at('shrink'), 'width'], shrink.width);
    const why = 'The shrink was measured after the first wash';
    readPlain(reading, { path: at('shrinkWashes'), given: shrinkWashes, fallback: 1, why });
  } else {
    for (const name of ['length', 'width'] as const) {
      const { low, usual, high } = fabric[name];
      const way = name === 'length' ? 'along' : 'across';
      reading.assumptions.push({
        path: [...at('shrink'), name].join('.'),
        value: usual,
        why: `${fabric.name} shrinks ${low} to ${high} % at the first wash, ${way} the roll`,
        source: fabric.shrinkSource,
      });
    }
  }
  return { shrink, shrinkWashes };
}
