import type { CautionCode, YardageAnswer } from '#core/contract.ts';
import { type Check, hasShape, isListOf, isNumber, isOneOf, isText } from './has-shape.ts';

const isCount = hasShape({ id: isText, count: isNumber });

const isStrip = hasShape({
  count: isNumber,
  length: isNumber,
  left: isNumber,
  pieces: isListOf(hasShape({ id: isText, count: isNumber, turned: isOneOf(true, false) })),
});

const isBought = hasShape(
  { offer: isText, unit: isOneOf('yd', 'm', 'pack') },
  { amount: isNumber, count: isNumber },
);

/** A later engine may know cautions that this page does not: they are told in its own words. */
const isCode = isText as Check<CautionCode>;

/** Whether all is there that the yardage reads of an answer of `/v1/yardage`; what a later engine adds passes unread. */
export const isYardageAnswer = hasShape({
  input: hasShape({
    unit: isOneOf('in', 'cm'),
    fabrics: isListOf(
      hasShape({
        pieces: isListOf(hasShape({ id: isText, width: isNumber, length: isNumber })),
      }),
    ),
  }),
  links: hasShape({ self: isText }),
  cautions: isListOf(
    hasShape({ code: isCode, severity: isOneOf('note', 'care', 'danger'), text: isText }),
  ),
  fabrics: isListOf(
    hasShape(
      {
        id: isText,
        usableWidth: isNumber,
        length: isNumber,
        buy: isListOf(isBought),
        strips: isListOf(isStrip),
      },
      {
        cost: hasShape({ of: isText, total: isNumber }),
        enough: isOneOf(true, false),
        fits: isListOf(isCount),
      },
    ),
  ),
});

/** An answer as the yardage knows it: no view can read what was not checked. */
export type ShownYardage = typeof isYardageAnswer extends Check<infer Answer> ? Answer : never;

/** Does not compile once the contract no longer gives what the yardage reads. */
export const yardageIsBound: YardageAnswer extends ShownYardage ? true : false = true;
