import type { BlockStack, Unit, WorkAnswer } from '../contract.ts';
import { letterOf } from '../layout/letter-of.ts';
import { nameRow } from '../layout/name-row.ts';
import { fromMillimetres, MILLIMETRES, roundTo } from '../length.ts';
import type { Plan } from './reckon-plan.ts';

/**
 * Writes what the work needs in the unit of the request: stacks, chains with their thread, bobbin changes,
 * rows as they are laid, and where the middle falls.
 */
export function writeWork(plan: Plan, unit: Unit): WorkAnswer {
  const bulk = MILLIMETRES[unit === 'in' ? 'yd' : 'm'];
  const { width, height } = plan.stitchLine;
  return {
    stacks: listStacks(plan),
    chains: plan.thread.chains.map(({ step, chains, seams, thread }) => ({
      step,
      chains,
      seams,
      thread: roundTo(thread / bulk, 4),
    })),
    bobbins: plan.bobbins,
    rows: plan.cells.map((blocks, index) => ({ name: nameRow(index), blocks })),
    topLeft: { block: `${nameRow(0)}1`, letter: plan.cells[0]?.[0] ?? '' },
    middle: plan.middle,
    perimeter: fromMillimetres(2 * (width + height), unit),
  };
}

/** The prints that have blocks; a letter is that of the print's place in the top. */
function listStacks({ cloth }: Pick<Plan, 'cloth'>): readonly BlockStack[] {
  return cloth
    .filter(({ role }) => role === 'top')
    .map(({ print, pieces }, index) => ({
      letter: letterOf(index),
      ...(print !== undefined && { print }),
      blocks: pieces,
    }))
    .filter(({ blocks }) => blocks > 0);
}
