import type { PlanRequest } from '#core/contract.ts';

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

/** A place in a request of the contract, such as `target.width` or `layers.0.prints`. */
export type DraftPath = Paths<PlanRequest>;

/**
 * A request as it is being written: each value as the person typed it, under its dotted path. It is the query of the
 * API word for word, so nothing that was typed is lost on the way.
 */
export type Draft = Readonly<Partial<Record<DraftPath, string>>>;

/** The query of a draft, without the question mark. It need not be canonical: the answer names the canonical one. */
export function writeQuery(draft: Draft): string {
  return Object.entries(draft)
    .map(([path, value = '']) => `${path}=${encodeURIComponent(value)}`)
    .join('&');
}
