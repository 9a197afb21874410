import type { PlanAnswer } from '#core/contract.ts';
import { drawQuilt } from '#core/drawing/draw-quilt.ts';
import { writeSvg } from '#core/drawing/write-svg.ts';
import { toMillimetres } from '#core/length.ts';
import { planQuilt } from '#core/plan.ts';
import { resolvePlan } from '#core/wish/resolve-plan.ts';
import { writeLength } from '#core/write-length.ts';
import { bindEndpoint } from '../http/bind-endpoint.ts';
import { costPlan } from '../http/cost-plan.ts';
import { planSchema } from '../http/schemas/plan-schema.ts';

/** The quilt of a plan as a picture to scale, for pages that allow no script. */
export const planPicture = bindEndpoint({
  path: '/v1/plan.svg',
  summary: 'The quilt of a plan drawn to scale as it comes out of the wash, as SVG without script.',
  schema: planSchema,
  resolve: resolvePlan,
  mediaType: 'image/svg+xml',
  cost: costPlan,
  write: (understood) => writePicture(planQuilt(understood)),
});

function writePicture(answer: PlanAnswer): string {
  const { columns, rows, blocks } = answer.grid;
  const { unit } = answer.input;
  const say = (length: number) => writeLength(toMillimetres(length, unit), unit);
  const sides = ({ width, height }: PlanAnswer['wish'] | PlanAnswer['size']['sewn']) =>
    `${say(width)} by ${say(height)}`;
  return writeSvg(drawQuilt(answer, 'washed'), {
    title: `Rag quilt of ${columns} by ${rows} blocks, ${sides(answer.size.washed)}`,
    description:
      `${blocks} blocks cut ${say(answer.block.cut)} with seams of ${say(answer.block.seam)}; ` +
      `sewn ${sides(answer.size.sewn)}, washed about ${sides(answer.size.washed)}. ` +
      `Prints, from the top row: ${answer.layout.cells.join(', ')}.`,
  });
}
