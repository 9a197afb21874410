import type { FaultCode } from './faults.ts';

/** Where in the input a fault lies: keys and list positions from the root. */
export type Path = readonly (string | number)[];

/**
 * One thing that is wrong with the input. A fault is a value, never an exception:
 * whoever shows it turns `code`, `expected` and `received` into a sentence.
 */
export interface Fault {
  readonly code: FaultCode;
  readonly path: Path;
  /** What would have been right, already in the caller's unit where it is a length. */
  readonly expected?: string | number | readonly string[];
  /** What was found. */
  readonly received?: string | number;
}

/** A value, or every fault that kept it from being one. */
export type Outcome<T> =
  | { readonly ok: true; readonly value: T }
  | { readonly ok: false; readonly faults: readonly Fault[] };

/**
 * Wraps a value that was found.
 *
 * @example
 * succeed(3) // => { ok: true, value: 3 }
 */
export function succeed<T>(value: T): Outcome<T> {
  return { ok: true, value };
}

/**
 * Wraps the faults that kept a value from being found.
 *
 * @example
 * fail([{ code: 'missing', path: ['target'] }]) // => { ok: false, faults: [{ code: 'missing', path: ['target'] }] }
 */
export function fail(faults: readonly Fault[]): Outcome<never> {
  return { ok: false, faults };
}
