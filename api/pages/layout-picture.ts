import type { LayoutAnswer } from '#core/contract.ts';
import { drawLayout } from '#core/drawing/draw-layout.ts';
import { writeSvg } from '#core/drawing/write-svg.ts';
import { letterOf } from '#core/layout/letter-of.ts';
import { planLayout } from '#core/layout.ts';
import { resolveLayout } from '#core/wish/resolve-layout.ts';
import { bindEndpoint } from '../http/bind-endpoint.ts';
import { layoutSchema } from '../http/schemas/layout-schema.ts';

/** A layout as a picture, for pages that allow no script. */
export const layoutPicture = bindEndpoint({
  path: '/v1/layout.svg',
  summary: 'Where each print goes, drawn as SVG without script.',
  schema: layoutSchema,
  resolve: resolveLayout,
  mediaType: 'image/svg+xml',
  write: (understood) => writePicture(planLayout(understood)),
});

function writePicture(answer: LayoutAnswer): string {
  const { columns, rows, prints } = answer.input;
  const { sides, corners } = answer.touching;
  const names = prints.map(({ id, count }, at) => `${letterOf(at)} ${id} (${count})`).join(', ');
  return writeSvg(drawLayout(answer), {
    title: `Layout of ${columns} by ${rows} blocks in ${prints.length} prints`,
    description:
      `${names}. Blocks of one print share a side ${sides} times and meet at a corner only ` +
      `${corners} times. From the top row: ${answer.cells.join(', ')}.`,
  });
}
