import type { PlanAnswer } from '#core/contract.ts';
import { type Check, hasShape, isListOf, isNumber, isOneOf, isText } from './has-shape.ts';
import { isPlanAnswer, PLAN_PARTS, type ShownPlan } from './is-plan-answer.ts';

const { input, buy, fabric, fabricMore, step, stack, rows } = PLAN_PARTS;
const lacking = isNumber;
/** Where cloth is bought of what is on offer: each line says itself what it is. */
const purchase = isListOf(hasShape({ text: isText }));

/** Parts of an answer of `/v1/plan` of which the view of one step and the hand-out read more than the page does. */
const isWork = hasShape(
  {
    input: hasShape({
      ...input,
      stitch: hasShape({ chained: isOneOf(true, false), borderPasses: isNumber }),
    }),
    steps: isListOf(hasShape({ ...step, cautions: isListOf(isText) })),
    fabrics: isListOf(
      hasShape({ ...fabric, buy, usableWidth: isNumber }, { ...fabricMore, purchase, lacking }),
    ),
    work: hasShape({
      stacks: isListOf(hasShape(stack, { print: isText })),
      rows,
      middle: hasShape({ from: isNumber, to: isNumber }),
    }),
  },
  {
    class: hasShape({
      pupils: isNumber,
      fabrics: isListOf(hasShape({ buy }, { purchase, lacking })),
      thread: hasShape({ used: isNumber, bobbins: isNumber }),
      needles: hasShape({ each: isNumber, all: isNumber }),
      blades: hasShape({ each: isNumber, all: isNumber }),
    }),
  },
);
type Work = typeof isWork extends Check<infer Answer> ? Answer : never;

/** A plan of which all is known that those views read. */
export type ShownWork = Omit<ShownPlan, keyof Work> & Work;

/** What a class needs. */
export type ShownClass = NonNullable<ShownWork['class']>;

/** Checks the rest of an answer. An older service may not tell it; then there is nothing to draw or to hand out. */
export function holdsWork(answer: ShownPlan): answer is ShownPlan & ShownWork {
  return isPlanAnswer(answer) && isWork(answer);
}

/** Does not compile once the contract no longer gives what is read. */
export const workIsBound: PlanAnswer extends ShownWork ? true : false = true;
