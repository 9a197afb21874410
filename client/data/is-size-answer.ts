import type { CautionCode, FabricName, PlanAnswer } from '#core/contract.ts';
import { type Check, hasShape, isListOf, isNumber, isOneOf, isText } from './has-shape.ts';

const isPair = hasShape({ width: isNumber, height: isNumber });
const isYards = isOneOf('yd', 'm');
const isBought = hasShape(
  { offer: isText, unit: isOneOf('yd', 'm', 'pack') },
  { amount: isNumber, count: isNumber },
);

/** A later engine may know cautions and cloth that this page does not: they are told by their own words. */
const isCode = isText as Check<CautionCode>;
const isFabric = isText as Check<FabricName>;

/** Whether all is there that the size reads of an answer of `/v1/plan`; what a later engine adds passes unread. */
export const isSizeAnswer = hasShape({
  input: hasShape({ unit: isOneOf('in', 'cm') }),
  links: hasShape({ self: isText, page: isText }),
  grid: hasShape({ columns: isNumber, rows: isNumber }),
  block: hasShape({ cut: isNumber }),
  size: hasShape({ sewn: isPair, washed: isPair }),
  wish: isPair,
  fit: isPair,
  fabrics: isListOf(
    hasShape(
      {
        role: isOneOf('top', 'middle', 'backing'),
        fabric: isFabric,
        pieces: isNumber,
        buy: hasShape({ amount: isNumber, unit: isYards }),
      },
      {
        print: isText,
        purchase: isListOf(isBought),
        cost: hasShape({ of: isText, total: isNumber }),
        lacking: isNumber,
      },
    ),
  ),
  time: hasShape({ total: isNumber }),
  cautions: isListOf(
    hasShape({ code: isCode, severity: isOneOf('note', 'care', 'danger'), text: isText }),
  ),
});

/** An answer as the size knows it: no view can read what was not checked. */
export type ShownSize = typeof isSizeAnswer extends Check<infer Answer> ? Answer : never;

/** Does not compile once the contract no longer gives what the size reads. */
export const sizeIsBound: PlanAnswer extends ShownSize ? true : false = true;
