import { type DrawnPlan, drawQuilt } from '#core/drawing/draw-quilt.ts';
import type { Drawing } from '#core/drawing/shape.ts';
import { letterOf } from '#core/layout/letter-of.ts';
import type { ShownStash, ShownStashOption } from '../../data/stash-answer-schema.ts';

/** Between snips, in the unit of the answer: what is usual, since a stash does not say. */
const PITCH = { in: 0.25, cm: 0.6 } as const;

/**
 * The prints of a stash in the order in which they first come: each keeps its letter and its look in every quilt.
 */
export function listPrints({ input }: ShownStash): readonly string[] {
  const top = input.pieces.filter(({ role }) => role === 'top');
  return [...new Set(top.map(({ print }) => print))];
}

/** One quilt of a stash to scale, washed. */
export function drawOption(option: ShownStashOption, answer: ShownStash): Drawing {
  return drawQuilt(describe(option, answer), 'washed');
}

/** The same small: faces and seams, nothing to read. */
export function drawSmall(option: ShownStashOption, answer: ShownStash): Drawing {
  const plan = describe({ ...option, sewn: option.washed }, answer);
  const { box, shapes } = drawQuilt(plan, 'sewn');
  return { box, shapes: shapes.filter(({ part }) => part === 'face' || part === 'snip') };
}

function describe(option: ShownStashOption, answer: ShownStash): DrawnPlan {
  const { unit, grain, block } = answer.input;
  const prints = listPrints(answer);
  const { layout, columns, rows, sewn, washed } = option;
  const letters = layout.prints.map((print) => letterOf(Math.max(0, prints.indexOf(print))));
  const cells = layout.cells.map((row) =>
    [...row].map((cell) => letters[cell.charCodeAt(0) - 65] ?? 'A').join(''),
  );
  return {
    input: { unit, grain, target: {}, layers: [{ role: 'top', prints: prints.map(() => ({})) }] },
    assumptions: [],
    grid: { columns, rows },
    block: { seam: block.seam, snipPitch: PITCH[unit] },
    size: { sewn, washed },
    wish: washed,
    layout: { cells },
  };
}
