import type { PlanAnswer } from '#core/contract.ts';
import { type Check, hasShape, isListOf, isNumber, isOneOf, isText } from './has-shape.ts';
import { FABRIC_NAMES } from './names.ts';

const isPair = hasShape({ width: isNumber, height: isNumber });
const isYards = isOneOf('yd', 'm');
const isRole = isOneOf('top', 'middle', 'backing');
const isAnything = ((_: unknown): _ is unknown => true) satisfies Check<unknown>;

/** What the steps name; whoever says them bears what is missing or strange. */
const isFigures = hasShape({}) as Check<PlanAnswer['steps'][number]['figures']>;

/** Parts of an answer that are told of more fully where the work is shown. */
export const PLAN_PARTS = {
  input: {
    unit: isOneOf('in', 'cm'),
    target: hasShape(
      {},
      {
        bed: hasShape({ width: isNumber, length: isNumber }),
        size: isText,
        columns: isNumber,
      },
    ),
    layers: isListOf(
      hasShape({
        role: isRole,
        width: isNumber,
        prints: isListOf(hasShape({ id: isText }, { color: isText })),
      }),
    ),
    grain: isText,
    tolerance: hasShape({ ease: isNumber }),
  },
  buy: hasShape({ amount: isNumber, unit: isYards }),
  fabric: {
    role: isRole,
    fabric: isOneOf(...FABRIC_NAMES),
    pieces: isNumber,
    spare: isNumber,
    perStrip: isNumber,
    strips: isNumber,
  },
  /** What only some rows of cloth have. */
  fabricMore: { print: isText, cost: hasShape({ of: isText, total: isNumber }) },
  step: { id: isText, do: isText, detail: isText, minutes: isNumber, figures: isFigures },
  stack: { letter: isText, blocks: isNumber },
  rows: isListOf(hasShape({ name: isText, blocks: isText })),
};
const { input, buy, fabric, fabricMore, step, stack, rows } = PLAN_PARTS;

/** What the page reads of an answer of `/v1/plan`; the rest passes unread, and so does what a later engine adds. */
export const isPlanAnswer = hasShape(
  {
    input: hasShape(input),
    assumptions: isListOf(
      hasShape({ path: isText, value: isAnything, why: isText }, { source: isText }),
    ),
    cautions: isListOf(
      hasShape(
        { code: isText, severity: isOneOf('note', 'care', 'danger'), text: isText },
        { source: isText },
      ),
    ),
    links: hasShape({ self: isText, page: isText }),
    grid: hasShape({ columns: isNumber, rows: isNumber }),
    block: hasShape({
      cut: isNumber,
      seam: isNumber,
      snipDepth: isNumber,
      snipPitch: isNumber,
      clearance: isNumber,
    }),
    bulk: hasShape({ needle: isText, crossingThickness: isNumber }),
    fringe: hasShape({ snips: isNumber }),
    size: hasShape({
      sewn: isPair,
      washed: hasShape({ width: isNumber, height: isNumber, low: isPair, high: isPair }),
      change: isPair,
    }),
    wish: isPair,
    fit: isPair,
    options: isListOf(
      hasShape({
        cut: isNumber,
        columns: isNumber,
        rows: isNumber,
        washed: isPair,
        fabric: isNumber,
        minutes: isNumber,
        chosen: isOneOf(true, false),
      }),
    ),
    fabrics: isListOf(hasShape({ ...fabric, buy }, fabricMore)),
    thread: hasShape({ used: isNumber, saved: isNumber, bobbins: isNumber, unit: isYards }),
    weight: hasShape({
      dry: isNumber,
      wet: isNumber,
      unit: isOneOf('lb', 'kg'),
      washer: hasShape({ machine: isOneOf('household', 'large', 'laundry') }),
    }),
    mismatch: hasShape({ within: isNumber, withinFromOneEnd: isNumber }),
    time: hasShape({ snip: isNumber, total: isNumber }),
    steps: isListOf(hasShape(step)),
    work: hasShape({ stacks: isListOf(hasShape(stack)), rows }),
    layout: hasShape({ cells: isListOf(isText) }),
  },
  {
    why: isListOf(
      hasShape({
        path: isText,
        formula: isText,
        numbers: hasShape({}),
        value: isNumber,
        source: isText,
      }),
    ),
  },
);

/** A plan as the page knows it: no view can read what was not checked. */
export type ShownPlan = typeof isPlanAnswer extends Check<infer Answer> ? Answer : never;

export type ShownOption = ShownPlan['options'][number];

/** Does not compile once the contract no longer gives what the page reads. */
export const answerIsBound: PlanAnswer extends ShownPlan ? true : false = true;
