import type { Region, Target, TargetInput } from '../contract.ts';
import { toMillimetres } from '../length.ts';
import { SOURCES } from '../sources.ts';
import { DEFAULTS } from '../tables/defaults.ts';
import { findSize, listSizes } from '../tables/sizes.ts';
import { keep, type Reading, readLengthField, readPlain } from './reading.ts';

/** The size wished for, in millimetres. */
export interface SizeWish {
  readonly width: number;
  readonly height: number;
  readonly at: 'washed' | 'sewn';
}

/**
 * Reads the target in whichever of its four forms it came.
 * A wish for a bed is width = mattress + 2·drop, length = mattress + drop at the foot.
 *
 * @returns the target with its defaults, in the unit of the request
 */
export function resolveTarget(reading: Reading, target: Target): TargetInput {
  if ('columns' in target) {
    keep(reading, ['target', 'columns'], target.columns);
    keep(reading, ['target', 'rows'], target.rows);
    return { columns: target.columns, rows: target.rows };
  }
  if ('size' in target) return resolveSize(reading, target);
  if ('bed' in target) return resolveBed(reading, target.bed);
  const side = (name: 'width' | 'height') =>
    readLengthField(reading, { path: ['target', name], given: target[name], limit: 'targetSide' });
  return {
    width: side('width'),
    height: side('height'),
    at: readPlain<'washed' | 'sewn'>(reading, {
      path: ['target', 'at'],
      given: target.at,
      fallback: 'washed',
      why: 'The size asked for is the size after washing',
    }),
  };
}

function resolveSize(reading: Reading, target: Extract<Target, { size: unknown }>): TargetInput {
  keep(reading, ['target', 'size'], target.size);
  const region = readPlain<Region>(reading, {
    path: ['target', 'region'],
    given: target.region,
    fallback: reading.unit === 'in' ? 'us' : 'eu',
    why: 'Sizes of the region that measures in this unit',
  });
  const row = findSize(target.size, region);
  if (row === undefined) {
    const expected = listSizes(region);
    const path = ['target', 'size'];
    reading.faults.push({ code: 'size-not-in-region', path, expected, received: target.size });
  } else if (row.kind === 'bed') {
    const why = `Cloth hanging at both sides and the foot of a ${target.size} mattress`;
    const value = DEFAULTS[reading.unit].drop;
    reading.assumptions.push({ path: 'target.drop', value, why, source: SOURCES.practice });
  }
  return { size: target.size, region };
}

function resolveBed(reading: Reading, bed: Extract<Target, { bed: unknown }>['bed']): TargetInput {
  const side = (name: 'width' | 'length') =>
    readLengthField(reading, { path: ['target', 'bed', name], given: bed[name], limit: 'bedSide' });
  const width = side('width');
  const length = side('length');
  const drop = readLengthField(reading, {
    path: ['target', 'bed', 'drop'],
    given: bed.drop,
    limit: 'drop',
    fallback: DEFAULTS[reading.unit].drop,
    why: 'Cloth hanging at both sides of the mattress',
  });
  const footDrop = readLengthField(reading, {
    path: ['target', 'bed', 'footDrop'],
    given: bed.footDrop,
    limit: 'drop',
    fallback: drop,
    why: 'Cloth hanging at the foot, as much as at the sides',
  });
  return { bed: { width, length, drop, footDrop } };
}

/**
 * The size that a target asks for, in millimetres; nothing where it gives the grid itself.
 *
 * @param target as resolved, in `unit`
 *
 * @example
 * findWish({ width: 40, height: 50, at: 'washed' }, 'in') // => { width: 1016, height: 1270, at: 'washed' }
 */
export function findWish(target: TargetInput, unit: 'in' | 'cm'): SizeWish | undefined {
  const mm = (value: number) => toMillimetres(value, unit);
  if ('columns' in target) return undefined;
  if ('bed' in target) {
    const { width, length, drop, footDrop } = target.bed;
    return { width: mm(width + 2 * drop), height: mm(length + footDrop), at: 'washed' };
  }
  if (!('size' in target)) {
    return { width: mm(target.width), height: mm(target.height), at: target.at };
  }
  const row = findSize(target.size, target.region);
  if (row === undefined) return undefined;
  const drop = row.kind === 'bed' ? mm(DEFAULTS[unit].drop) : 0;
  return { width: row.width + 2 * drop, height: row.height + drop, at: 'washed' };
}
