import type { FabricName, Role } from '#core/contract.ts';
import { type AnyDraft, editDraft } from './draft.ts';

export const ROLES: readonly Role[] = ['top', 'middle', 'backing'];

/**
 * The place of a layer in a draft; where there is none, the place where it would be put.
 *
 * @example
 * findLayer({ 'layers.0.role': 'top', 'layers.1.role': 'backing' }, 'backing') // => 1
 * findLayer({ 'layers.0.role': 'top', 'layers.1.role': 'backing' }, 'middle') // => 2
 */
export function findLayer(draft: AnyDraft, role: Role): number {
  let index = 0;
  while (![undefined, role].includes(draft[`layers.${index}.role`] as Role | undefined)) index += 1;
  return index;
}

/**
 * Makes a layer of another cloth, or takes it out where that is empty. Another cloth brings its own weight and shrink,
 * so what was known of the old one goes.
 *
 * @example
 * setFabric({ 'layers.0.role': 'top' }, 'middle', 'flannel') // => { 'layers.0.role': 'top', 'layers.1.role': 'middle', 'layers.1.fabric': 'flannel' }
 */
export function setFabric<Kind extends AnyDraft>(
  draft: Kind,
  role: Role,
  fabric: FabricName | '',
): Kind {
  const index = findLayer(draft, role);
  if (fabric === '') return dropLayer(draft, index);
  const known = /\.(gsm|thickness|shrink.*)$/;
  const kept = Object.entries(draft).filter(
    ([path]) => !(path.startsWith(`layers.${index}.`) && known.test(path)),
  );
  const layer = { [`layers.${index}.role`]: role, [`layers.${index}.fabric`]: fabric };
  return { ...Object.fromEntries(kept), ...layer } as Kind;
}

/** Takes a layer out; those after it move up. */
function dropLayer<Kind extends AnyDraft>(draft: Kind, index: number): Kind {
  const kept = Object.entries(editDraft(draft, `layers.${index}`));
  const moveUp = (path: string) =>
    path.replace(/^layers\.(\d+)/, (all, at: string) =>
      Number(at) > index ? `layers.${Number(at) - 1}` : all,
    );
  return Object.fromEntries(kept.map(([path, value]) => [moveUp(path), value])) as Kind;
}
