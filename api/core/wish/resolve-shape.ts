import type { StashInput, StashShape } from '../contract.ts';
import { USUAL_RATIO } from '../stash/stash-spec.ts';
import { readUnder } from './read-under.ts';
import { type Reading, readPlain } from './reading.ts';
import { resolveTarget } from './resolve-target.ts';

/**
 * Reads the shape a quilt should have: its width for its height, or the size to stop at.
 *
 * @returns the shape with its defaults, in the unit of the request
 */
export function resolveShape(reading: Reading, given: StashShape | undefined): StashInput['shape'] {
  if (given !== undefined && 'target' in given) {
    return { target: readUnder(reading, ['shape'], (inner) => resolveTarget(inner, given.target)) };
  }
  const ratio = readPlain(reading, {
    path: ['shape', 'ratio'],
    given: given?.ratio,
    fallback: USUAL_RATIO,
    why: 'Four wide to five high, give or take a quarter, as most throws are',
  });
  return { ratio };
}
