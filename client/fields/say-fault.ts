import type { FaultCode } from '#core/faults.ts';
import type { Fault } from '#core/outcome.ts';
import { writeBound } from './write-figures.ts';

/** A sentence for each fault that a part of a page can meet. */
export type Sentences = Readonly<Partial<Record<FaultCode, (fault: Fault) => string>>>;

/**
 * The sentence for a fault, a bound in it told as a maker reads it.
 *
 * @param otherwise for a fault that has no sentence, such as one that a later service tells of.
 *
 * @example
 * const sentences = { 'too-large': (fault) => `At most ${fault.expected}.` };
 * sayFault(sentences, { code: 'too-large', path: [], expected: '196.85 in' }, () => 'No.') // => 'At most 196¾ in.'
 * sayFault(sentences, { code: 'empty', path: [] }, () => 'No.') // => 'No.'
 */
export function sayFault(
  sentences: Sentences,
  fault: Fault,
  otherwise: (fault: Fault) => string,
): string {
  const round = fault.code === 'too-small' ? Math.ceil : Math.floor;
  const expected = writeBound(`${fault.expected ?? ''}`, round);
  return (sentences[fault.code] ?? otherwise)({ ...fault, ...(expected && { expected }) });
}
