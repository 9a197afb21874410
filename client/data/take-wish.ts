import type { ReadWish } from '#core/wish/read-wish.ts';
import { type Draft, editDraft } from './draft.ts';
import { findLayer, setFabric } from './layers.ts';
import { readHostInput } from './read-host-input.ts';

/**
 * Puts what was read in a wish into a draft: its size in place of the old one, and of all else what the wish
 * speaks of. Layers keep their cloth; a middle that is there already stays as it is, and so do as many prints.
 *
 * @param draft with layers, in the unit of the wish
 *
 * @example
 * const draft = { 'layers.0.role': 'top', 'layers.1.role': 'backing', 'target.size': 'lap' };
 * takeWish(draft, { unit: 'in', target: { size: 'twin' }, prints: 6 })['layers.0.prints'] // => '6'
 */
export function takeWish(draft: Draft, wish: ReadWish): Draft {
  const { prints, middle, passed: _passed, unit: _unit, ...asked } = wish;
  const kept = editDraft(editDraft(draft, 'target'), 'infant');
  const layered = middle === undefined ? kept : setMiddle(kept, middle);
  const top = findLayer(layered, 'top');
  const place = `layers.${top}.prints` as const;
  const isSo = prints === undefined || prints === countPrints(layered, place);
  const printed = isSo ? layered : editDraft(layered, place, `${prints}`);
  return { ...printed, ...readHostInput(asked).draft };
}

/** Prints that have a place of their own in a draft, with their names and colours. */
function countPrints(draft: Draft, place: string): number {
  const ids = Object.keys(draft).filter((path) => path.startsWith(`${place}.`));
  return new Set(ids.map((path) => path.slice(place.length + 1).split('.')[0])).size;
}

function setMiddle(draft: Draft, isThere: boolean): Draft {
  const has = Object.entries(draft).some(([path, role]) => /role$/.test(path) && role === 'middle');
  return has === isThere ? draft : setFabric(draft, 'middle', isThere ? 'cotton-batting' : '');
}
