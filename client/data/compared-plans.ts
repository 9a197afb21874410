import { writeQuery } from './draft.ts';
import { readHostInput } from './read-host-input.ts';

/** The two plans that are compared, each as a flat query of `/v1/plan`; empty where none is given. */
export interface ComparedPlans {
  readonly a: string;
  readonly b: string;
}

/**
 * The plan in an address that was pasted: a whole one, one from its path on, or the query alone. What is no part of a
 * plan in it is passed over.
 *
 * @returns a flat query; empty where the text holds no plan.
 *
 * @example
 * readPlanAddress('https://quilts.example/?target.size=lap&ref=mail') // => 'target.size=lap'
 * readPlanAddress('see you') // => ''
 */
export function readPlanAddress(text: string): string {
  const query = text.trim().replace(/#.*$/s, '');
  const { draft } = readHostInput(query.slice(query.indexOf('?') + 1));
  return writeQuery(draft);
}

/**
 * Reads which plans an address compares.
 *
 * @example
 * readCompared('?a=target.size%3Dlap').a // => 'target.size=lap'
 */
export function readCompared(query: string): ComparedPlans {
  const found = new URLSearchParams(query);
  const read = (name: string) => readPlanAddress(found.get(name) ?? '');
  return { a: read('a'), b: read('b') };
}

/**
 * Writes the address of a comparison, without its question mark; what is empty is left out.
 *
 * @example
 * writeCompared({ a: 'target.size=lap', b: '' }) // => 'a=target.size%3Dlap'
 */
export function writeCompared({ a, b }: ComparedPlans): string {
  return [
    ['a', a],
    ['b', b],
  ]
    .filter(([, query]) => query !== '')
    .map(([name, query = '']) => `${name}=${encodeURIComponent(query)}`)
    .join('&');
}
