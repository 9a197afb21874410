import type { Step } from '../contract.ts';
import { fromMillimetres, roundTo } from '../length.ts';
import { massUnit } from '../mass.ts';
import { writeExact, writeLength } from '../write-length.ts';
import { countChanges } from './count-changes.ts';
import { makeStep } from './make-step.ts';
import { sayBobbins } from './say-bobbins.ts';
import type { WorkFacts } from './work-facts.ts';

/**
 * What comes after joining: the border, the threads, the wash.
 */
export function orderFinish(facts: WorkFacts): readonly Step[] {
  const trim = makeStep('trim', 'wash', {
    do: 'Trim the loose threads',
    count: 1,
    detail: 'Front and back, before the first wash.',
    minutes: facts.time.trim,
  });
  return [stitchBorder(facts), trim, washQuilt(facts)];
}

function stitchBorder({ borderPasses, seam, perimeter, unit, bobbins, time }: WorkFacts): Step {
  const times = borderPasses === 1 ? 'once' : `${borderPasses} times`;
  return makeStep('border', 'border', {
    do: 'Stitch round the whole quilt',
    count: borderPasses,
    detail: `${writeExact(seam, unit)} inside the edge, ${times}, ${writeLength(perimeter, unit)} each round. Then snip any edge that is still whole.${sayBobbins(bobbins, 'border')}`,
    minutes: time.border,
    figures: {
      passes: borderPasses,
      seam: fromMillimetres(seam, unit),
      perimeter: fromMillimetres(perimeter, unit),
      bobbins: countChanges(bobbins, 'border'),
    },
    cautions: ['snip-near-seam'],
  });
}

function washQuilt({ wet, unit }: WorkFacts): Step {
  const mass = massUnit(unit);
  const said = roundTo(wet, wet < 1 ? 2 : 1);
  return makeStep('wash', 'wash', {
    do: 'Wash, shake out, dry, and clean the lint away',
    count: 1,
    detail: `It weighs about ${said} ${mass} when wet. Shake it outdoors between washer and dryer. The fringe grows softer with each wash.`,
    figures: { wet: roundTo(wet, 4), unit: mass },
    cautions: ['washer-load', 'dryer-lint'],
  });
}
