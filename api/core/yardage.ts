import { rotaryCutter } from './cautions.ts';
import type { YardageAnswer, YardageInput } from './contract.ts';
import { ENGINE } from './engine.ts';
import { writeLinks } from './links.ts';
import type { Resolved } from './wish/reading.ts';
import { answerFabric } from './yardage/answer-fabric.ts';

/**
 * How much of each fabric its pieces need, what to buy, and how to cut it.
 *
 * @param resolved what `resolveYardage` understood, so that every piece fits its fabric
 * @returns the body of the answer, links included
 */
export function planYardage(resolved: Resolved<YardageInput>): YardageAnswer {
  const { input, assumptions, query } = resolved;
  return {
    engine: ENGINE,
    fabrics: input.fabrics.map((fabric) => answerFabric(fabric, input.unit)),
    input,
    assumptions,
    cautions: [rotaryCutter()],
    links: writeLinks(query, { self: '/v1/yardage' }),
  };
}
