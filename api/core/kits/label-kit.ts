import type { Fibre, KitLabel, Role } from '../contract.ts';
import { SOURCES } from '../sources.ts';
import { blendFibres, type FibreMass } from './blend-fibres.ts';

/** Cloth of one layer of a kit. */
export interface LabelLayer extends FibreMass {
  readonly role: Role;
}

/**
 * What a label can say of a kit: fibres of face and back together by mass, those of a middle layer
 * apart as filling since it is there for warmth (16 CFR 303.22), thread left out (15 USC 70j), and a
 * line of care (common practice).
 *
 * @param layers at least a top and a backing; masses in any one unit
 *
 * @example
 * labelKit([{ role: 'top', mass: 1, fibres: [{ fibre: 'cotton', percent: 100 }] }, { role: 'backing', mass: 1, fibres: [{ fibre: 'cotton', percent: 100 }] }]).content // => '100% cotton'
 */
export function labelKit(layers: readonly LabelLayer[]): KitLabel {
  const covering = blendFibres(layers.filter(({ role }) => role !== 'middle'));
  const middle = layers.filter(({ role }) => role === 'middle');
  const filling = middle.length === 0 ? undefined : blendFibres(middle);
  return {
    covering,
    ...(filling !== undefined && { filling }),
    content:
      filling === undefined
        ? writeFibres(covering)
        : `Covering: ${writeFibres(covering)}. Filling: ${writeFibres(filling)}.`,
    care: writeCare([...covering, ...(filling ?? [])]),
    source: SOURCES.fibres,
  };
}

function writeFibres(fibres: readonly Fibre[]): string {
  return fibres.map(({ fibre, percent }) => `${percent}% ${fibre}`).join(', ');
}

/** Cold and low spare cloth that was not prewashed; polyester does not bear a hot iron. */
function writeCare(fibres: readonly Fibre[]): string {
  const melts = fibres.some(({ fibre }) => /polyester|nylon|acrylic|polyamide/i.test(fibre));
  const iron = melts ? 'Do not iron.' : 'Do not iron the fringe.';
  return `Machine wash cold with like colours. Do not bleach. Tumble dry low. ${iron}`;
}
