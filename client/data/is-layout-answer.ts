import type { LayoutAnswer } from '#core/contract.ts';
import { type Check, hasShape, isListOf, isNumber, isOneOf, isText } from './has-shape.ts';

/** Whether all is there that the page reads of an answer of `/v1/layout`; what a later engine adds passes unread. */
export const isLayoutAnswer = hasShape({
  input: hasShape({
    columns: isNumber,
    rows: isNumber,
    touch: isOneOf('sides', 'corners'),
    prints: isListOf(hasShape({ id: isText, count: isNumber }, { color: isText })),
  }),
  links: hasShape({ self: isText }),
  cells: isListOf(isText),
  fewest: isNumber,
  optimal: isOneOf(true, false),
  seed: isNumber,
});

/** A layout as the page knows it: no view can read what was not checked. */
export type ShownLayout = typeof isLayoutAnswer extends Check<infer Answer> ? Answer : never;

/** Does not compile once the contract no longer gives what the page reads. */
export const layoutIsBound: LayoutAnswer extends ShownLayout ? true : false = true;
