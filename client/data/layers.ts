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
 * Makes a layer of another cloth; puts it in where there is none, between its neighbours; or takes it out, and any other
 * like it, where that is empty. Another cloth brings its own weight and shrink, so what was known of the old one goes.
 *
 * @example
 * setFabric({ 'layers.0.role': 'top' }, 'middle', 'flannel') // => { 'layers.0.role': 'top', 'layers.1.role': 'middle', 'layers.1.fabric': 'flannel' }
 */
export function setFabric<Kind extends AnyDraft>(
  draft: Kind,
  role: Role,
  fabric: FabricName | '',
): Kind {
  const found = findLayer(draft, role);
  const isThere = draft[`layers.${found}.role`] === role;
  if (fabric === '') return isThere ? setFabric(dropLayer(draft, found), role, '') : draft;
  const index = isThere ? found : findGap(draft, role);
  const known = /\.(gsm|thickness|shrink.*)$/;
  const kept = Object.entries(isThere ? draft : moveLayers(draft, index, 1)).filter(
    ([path]) => !(path.startsWith(`layers.${index}.`) && known.test(path)),
  );
  const layer = { [`layers.${index}.role`]: role, [`layers.${index}.fabric`]: fabric };
  return { ...Object.fromEntries(kept), ...layer } as Kind;
}

/** The place before the first layer that lies further down. */
function findGap(draft: AnyDraft, role: Role): number {
  const depth = (index: number) => ROLES.indexOf(draft[`layers.${index}.role`] as Role);
  let index = 0;
  while (depth(index) >= 0 && depth(index) <= ROLES.indexOf(role)) index += 1;
  return index;
}

/** Takes a layer out; those after it move up. */
function dropLayer<Kind extends AnyDraft>(draft: Kind, index: number): Kind {
  return moveLayers(editDraft<AnyDraft>(draft, `layers.${index}`) as Kind, index, -1);
}

/** Gives the layers from one on other numbers. */
function moveLayers<Kind extends AnyDraft>(draft: Kind, from: number, by: number): Kind {
  const move = (path: string) =>
    path.replace(/^layers\.(\d+)/, (all, at: string) =>
      Number(at) < from ? all : `layers.${Number(at) + by}`,
    );
  return Object.fromEntries(
    Object.entries(draft).map(([path, value]) => [move(path), value]),
  ) as Kind;
}
