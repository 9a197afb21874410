import type { Unit } from '#core/contract.ts';
import { USUAL_FABRICS } from '#core/tables/usual-fabrics.ts';
import type { ReadWish } from '#core/wish/read-wish.ts';
import { type Draft, editDraft } from './draft.ts';
import { findLayer, setFabric } from './layers.ts';
import { readHostInput } from './read-host-input.ts';

/** Places of a wish that hold a length. */
const LENGTHS = /^(?:target\.(?:width|height|bed\.)|block\.)/;

/**
 * Puts what was read in a wish into a draft: its size in place of the old one, and of all else what the wish
 * speaks of. Layers keep their cloth; a middle that is there already stays as it is, and so do as many prints.
 *
 * @param draft with layers; mostly in the unit of the wish, and in another where the host has set that
 *
 * @example
 * const draft = { 'layers.0.role': 'top', 'layers.1.role': 'backing', 'target.size': 'lap' };
 * takeWish(draft, { unit: 'in', target: { size: 'twin' }, prints: 6 })['layers.0.prints'] // => '6'
 */
export function takeWish(draft: Draft, wish: ReadWish): Draft {
  const { prints, middle, passed: _passed, unit, ...asked } = wish;
  const kept = editDraft(editDraft(draft, 'target'), 'infant');
  const layered = middle === undefined ? kept : setMiddle(kept, middle);
  const top = findLayer(layered, 'top');
  const place = `layers.${top}.prints` as const;
  const isSo = prints === undefined || prints === countPrints(layered, place);
  const printed = isSo ? layered : editDraft(layered, place, `${prints}`);
  const read = readHostInput<Draft>(asked).draft;
  return { ...printed, ...(unit === (draft.unit ?? 'in') ? read : nameUnit(read, unit)) };
}

/** Lengths with the unit of the wish beside them, for a draft whose unit is another and stays. */
function nameUnit(read: Draft, unit: Unit): Draft {
  const named = Object.entries(read).map(([path, said]) => {
    const isBare = LENGTHS.test(path) && !Number.isNaN(Number(said));
    return [path, isBare ? `${said} ${unit}` : said];
  });
  return Object.fromEntries(named) as Draft;
}

/** Prints that have a place of their own in a draft, with their names and colours. */
function countPrints(draft: Draft, place: string): number {
  const ids = Object.keys(draft).filter((path) => path.startsWith(`${place}.`));
  return new Set(ids.map((path) => path.slice(place.length + 1).split('.')[0])).size;
}

function setMiddle(draft: Draft, isThere: boolean): Draft {
  const has = Object.entries(draft).some(([path, role]) => /role$/.test(path) && role === 'middle');
  return has === isThere ? draft : setFabric(draft, 'middle', isThere ? USUAL_FABRICS.middle : '');
}
