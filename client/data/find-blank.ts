import type { Fault } from '#core/outcome.ts';
import type { AnyDraft } from './draft.ts';

/**
 * The places of a draft that were left empty and may not be.
 *
 * @example
 * findBlank({ 'target.width': '', 'target.height': '50' }) // => [{ code: 'empty', path: ['target', 'width'] }]
 */
export function findBlank(draft: AnyDraft): readonly Fault[] {
  return Object.entries(draft)
    .filter(([, value]) => value === '')
    .map(([path]) => ({ code: 'empty', path: path.split('.') }));
}
