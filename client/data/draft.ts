import type { PlanRequest } from '#core/contract.ts';
import type { Fault } from '#core/outcome.ts';

type Plain = string | number | boolean;

type Join<Key extends string, Rest extends string> = Rest extends '' ? Key : `${Key}.${Rest}`;

/** The dotted paths of all plain values in a shape; a place in a list is a number. */
type Paths<Shape> = Shape extends Plain
  ? ''
  : Shape extends readonly (infer Item)[]
    ? Join<`${number}`, Paths<Item>>
    : {
        [Key in keyof Shape & string]-?: Join<Key, Paths<Exclude<Shape[Key], undefined>>>;
      }[keyof Shape & string];

/**
 * A request as it is being written: each value as the person typed it, under its dotted path. It is the query of the
 * API word for word, so nothing that was typed is lost on the way.
 */
export type DraftOf<Request> = Readonly<Partial<Record<Paths<Request>, string>>>;

/** A plan as it is being written. */
export type Draft = DraftOf<PlanRequest>;

/** A place in the request of a plan, such as `target.width` or `layers.0.prints`. */
export type DraftPath = keyof Draft;

/** A draft of whatever request. */
export type AnyDraft = Readonly<Partial<Record<string, string>>>;

/** A place in a draft, or a part of it that holds several. */
type Place<Kind> = (keyof Kind & string) | 'target' | `layers.${number}`;

/** The query of a draft, without the question mark. It need not be canonical: the answer names the canonical one. */
export function writeQuery(draft: AnyDraft): string {
  return Object.entries(draft)
    .map(([path, value = '']) => `${path}=${encodeURIComponent(value)}`)
    .join('&');
}

/**
 * Changes one place of a draft, and takes out whatever lay under it; `undefined` takes the place itself out.
 *
 * @example
 * editDraft({ 'layers.0.prints.0.id': 'Blue' }, 'layers.0.prints', '4') // => { 'layers.0.prints': '4' }
 */
export function editDraft<Kind extends AnyDraft>(
  draft: Kind,
  path: Place<Kind>,
  value?: string,
): Kind {
  const kept = Object.entries(draft).filter(([key]) => !key.startsWith(`${path}.`));
  const { [path]: _old, ...others } = Object.fromEntries(kept);
  const next = value === undefined ? others : { ...Object.fromEntries(kept), [path]: value };
  return next as Kind;
}

/**
 * Takes out of a draft what is at fault, so that an answer can be had of the rest.
 *
 * @example
 * dropFaulty({ 'target.size': 'lap', 'block.seam': 'wide' }, [{ code: 'not-a-length', path: ['block', 'seam'] }]) // => { 'target.size': 'lap' }
 */
export function dropFaulty<Kind extends AnyDraft>(draft: Kind, faults: readonly Fault[]): Kind {
  const places = faults.map(({ path }) => path.join('.'));
  const isFaulty = (path: string) =>
    places.some((place) => place === '' || path === place || path.startsWith(`${place}.`));
  return Object.fromEntries(Object.entries(draft).filter(([path]) => !isFaulty(path))) as Kind;
}
