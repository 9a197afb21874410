import * as v from 'valibot';
import type { PlanAnswer } from '#core/contract.ts';
import { alike } from './alike.ts';
import { many, maybeText, number, text } from './answer-parts.ts';
import { planAnswerSchema, type ShownPlan } from './plan-answer-schema.ts';
import type { Frozen } from './same-shape.ts';

const plan = planAnswerSchema.entries;
const { buy } = plan.fabrics.item.entries;
/** Where cloth is bought of what is on offer: each line says itself what it is. */
const purchase = v.exactOptional(many(alike(text, 'text')));
const lacking = v.exactOptional(number);

/**
 * What the view of one step and the hand-out read of an answer of `/v1/plan`: what the page has checked and more. It
 * is loaded with them, so that the page itself stays light.
 */
const workAnswerSchema = v.object({
  ...plan,
  input: v.object({
    ...plan.input.entries,
    stitch: v.object({ chained: v.boolean(), borderPasses: number }),
  }),
  steps: many(v.object({ ...plan.steps.item.entries, cautions: many(text) })),
  fabrics: many(
    v.object({
      ...plan.fabrics.item.entries,
      ...{ usableWidth: number, purchase, lacking },
    }),
  ),
  work: v.object({
    ...plan.work.entries,
    stacks: many(v.object({ ...plan.work.entries.stacks.item.entries, print: maybeText })),
    middle: alike(number, 'from', 'to'),
  }),
  class: v.exactOptional(
    v.object({
      pupils: number,
      fabrics: many(v.object({ buy, purchase, lacking })),
      thread: alike(number, 'used', 'bobbins'),
      needles: alike(number, 'each', 'all'),
      blades: alike(number, 'each', 'all'),
    }),
  ),
});

/** A plan of which all is known that those views read. */
export type ShownWork = Frozen<v.InferOutput<typeof workAnswerSchema>>;

/** What a class needs. */
export type ShownClass = NonNullable<ShownWork['class']>;

/** Checks the rest of an answer. An older service may not tell it; then there is nothing to draw or to hand out. */
export function holdsWork(answer: ShownPlan): answer is ShownWork {
  return v.is(workAnswerSchema, answer);
}

/** Does not compile once the contract no longer gives what is read. */
export const workIsBound: PlanAnswer extends ShownWork ? true : false = true;
