import type { Step } from '../contract.ts';
import { fromMillimetres } from '../length.ts';
import { writeExact } from '../write-length.ts';
import { makeStep } from './make-step.ts';
import { sayCount } from './say-count.ts';
import type { WorkFacts } from './work-facts.ts';

/**
 * What comes before sewing: a test block where cloth was not measured, the prewash, the cutting.
 */
export function prepareWork(facts: WorkFacts): readonly Step[] {
  const { prewashed, isMeasured } = facts;
  const roles = [...new Set(prewashed)];
  const swatch = makeStep('swatch', 'prepare', {
    do: 'Sew one test block, measure it, wash it, measure it again',
    count: 1,
    detail: 'It tells how your own cloth shrinks, better than any table.',
    cautions: ['unmeasured-shrink', 'dye-bleed'],
  });
  const prewash = makeStep('prewash', 'prepare', {
    do: `Wash and dry the cloth of the ${roles.join(' and ')}`,
    count: 1,
    detail: 'Wash and dry it as the quilt will be washed, then press it flat.',
    figures: { roles },
    cautions: ['dye-bleed'],
  });
  return [
    ...(isMeasured ? [] : [swatch]),
    ...(roles.length > 0 ? [prewash] : []),
    cutSquares(facts),
  ];
}

function cutSquares({ pieces, fabrics, cut, unit, time }: WorkFacts): Step {
  const side = writeExact(cut, unit);
  return makeStep('cut', 'cut', {
    do: `Cut ${sayCount(pieces, 'square')} of ${side}`,
    count: pieces,
    detail: `Cut strips of ${side} across the roll, then squares from the strips. ${fabrics.length} layers, spare pieces included.`,
    minutes: time.cut,
    figures: { pieces, cut: fromMillimetres(cut, unit), layers: fabrics.length },
    cautions: ['rotary-cutter'],
  });
}
