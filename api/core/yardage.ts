import { rotaryCutter } from './cautions.ts';
import { spendSteps } from './cloth/strips/spend-steps.ts';
import type { YardageAnswer, YardageInput } from './contract.ts';
import { ENGINE } from './engine.ts';
import { writeLinks } from './links.ts';
import type { Resolved } from './wish/reading.ts';
import { answerFabric } from './yardage/answer-fabric.ts';

/** Steps for all fabrics of one request, so that none takes long: counted, never timed. */
const STEPS = 86_000;
/** Steps that it takes to read and write one kind of piece, and half as many for each flat piece it may lie on. */
const TOLL = 1000;
/** What is left to reckon with in any case. */
const LEAST = 6000;

/**
 * How much of each fabric its pieces need, what to buy, and how to cut it.
 *
 * All fabrics share the steps of one request, each what those before it left: an order so large that they
 * run out gets a plan that is not proven the least, with a bound that is.
 *
 * @param resolved what `resolveYardage` understood, so that every piece fits its fabric
 * @returns the body of the answer, links included
 */
export function planYardage(resolved: Resolved<YardageInput>): YardageAnswer {
  const { input, assumptions, query } = resolved;
  const { fabrics, unit } = input;
  const toll = fabrics.reduce(
    (sum, { pieces, offers = [] }) => sum + TOLL * pieces.length * (1 + offers.length / 2),
    0,
  );
  const allowance = { steps: Math.max(LEAST, STEPS - toll) };
  return {
    engine: ENGINE,
    fabrics: fabrics.map((fabric, at) =>
      spendSteps(allowance, allowance.steps / (fabrics.length - at), (budget) =>
        answerFabric(fabric, unit, budget),
      ),
    ),
    input,
    assumptions,
    cautions: [rotaryCutter()],
    links: writeLinks(query, { self: '/v1/yardage' }),
  };
}
