import type { RollAnswer, StripGroup, Unit, YardageAnswer } from '#core/contract.ts';
import { drawCuts } from '#core/drawing/draw-cuts.ts';
import { writeSvg } from '#core/drawing/write-svg.ts';
import { toMillimetres } from '#core/length.ts';
import { resolveYardage } from '#core/wish/resolve-yardage.ts';
import { writeLength } from '#core/write-length.ts';
import { planYardage } from '#core/yardage.ts';
import { bindEndpoint } from '../http/bind-endpoint.ts';
import { costYardage } from '../http/cost-yardage.ts';
import { yardageSchema } from '../http/schemas/yardage-schema.ts';

/** How cloth is cut, as a picture to scale, for pages that allow no script. */
export const yardagePicture = bindEndpoint({
  path: '/v1/yardage.svg',
  summary: 'How each cloth is cut, strip by strip and to scale, as SVG without script.',
  schema: yardageSchema,
  resolve: resolveYardage,
  mediaType: 'image/svg+xml',
  cost: costYardage,
  write: (understood) => writePicture(planYardage(understood)),
});

function writePicture(answer: YardageAnswer): string {
  const names = answer.fabrics.map(({ id }) => id).join(', ');
  const { unit } = answer.input;
  return writeSvg(drawCuts(answer), {
    title: `How to cut ${names}`,
    description: answer.fabrics.map((fabric) => describeCuts(fabric, unit)).join(' '),
  });
}

function describeCuts({ id, usableWidth, buy, strips, sheets = [] }: RollAnswer, unit: Unit) {
  const roll = strips.length === 0 ? [] : [describeStrips(strips, unit)];
  const flat = sheets.map(({ offer, count, strips: inner }) => {
    return `from each of ${count} ${offer}: ${describeStrips(inner, unit)}`;
  });
  const bought = buy.map(({ text }) => text).join(' and ');
  return `${id}, ${bought}, ${say(usableWidth, unit)} across: ${[...roll, ...flat].join('; ')}.`;
}

function describeStrips(strips: readonly StripGroup[], unit: Unit): string {
  return strips
    .map(({ count, length, pieces }) => {
      const each = pieces.map(({ id, count: beside, turned }) => {
        return `${beside} ${id}${turned ? ' turned' : ''}`;
      });
      return `${count} ${count === 1 ? 'strip' : 'strips'} of ${say(length, unit)}, each ${each.join(' and ')}`;
    })
    .join('; ');
}

function say(length: number, unit: Unit): string {
  return writeLength(toMillimetres(length, unit), unit);
}
