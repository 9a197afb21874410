import * as v from 'valibot';
import type { PlanAnswer } from '#core/contract.ts';
import { alike } from './alike.ts';
import { FABRIC_NAMES } from './names.ts';
import type { Frozen } from './same-shape.ts';

/** Every number has its bounds, since JSON can write one that reads as infinite. */
const number = v.custom<number>(Number.isFinite);
const text = v.string();
const source = v.exactOptional(text);
const pair = alike(number, 'width', 'height');
const yards = v.picklist(['yd', 'm']);
const role = v.picklist(['top', 'middle', 'backing']);

/** What the steps name; whoever says them bears what is missing or strange. */
const figures = v.custom<PlanAnswer['steps'][number]['figures']>((value) =>
  v.is(v.object({}), value),
);

const print = v.object({ id: text, color: source });
const bed = alike(number, 'width', 'length');
const target = v.object({
  bed: v.exactOptional(bed),
  size: source,
  columns: v.exactOptional(number),
});

const why = v.object({
  path: text,
  formula: text,
  numbers: v.object({}),
  value: number,
  source: text,
});

/** What the page reads of an answer of `/v1/plan`; the rest passes unread, and so does what a later engine adds. */
export const planAnswerSchema = v.object({
  input: v.object({
    unit: v.picklist(['in', 'cm']),
    target,
    layers: v.array(v.object({ role, width: number, prints: v.array(print) })),
    grain: text,
    tolerance: alike(number, 'ease'),
  }),
  assumptions: v.array(v.object({ path: text, value: v.unknown(), why: text, source })),
  cautions: v.array(
    v.object({ code: text, severity: v.picklist(['note', 'care', 'danger']), text, source }),
  ),
  links: alike(text, 'self', 'page'),
  grid: alike(number, 'columns', 'rows'),
  block: alike(number, 'cut', 'seam', 'snipDepth', 'snipPitch', 'clearance'),
  bulk: v.object({ needle: text, crossingThickness: number }),
  fringe: alike(number, 'snips'),
  size: v.object({
    sewn: pair,
    washed: v.object({ width: number, height: number, low: pair, high: pair }),
    change: pair,
  }),
  wish: pair,
  fit: pair,
  options: v.array(
    v.object({
      cut: number,
      columns: number,
      rows: number,
      washed: pair,
      fabric: number,
      minutes: number,
      chosen: v.boolean(),
    }),
  ),
  fabrics: v.array(
    v.object({
      role,
      fabric: v.picklist(FABRIC_NAMES),
      print: source,
      pieces: number,
      spare: number,
      perStrip: number,
      strips: number,
      buy: v.object({ amount: number, unit: yards }),
      cost: v.exactOptional(v.object({ of: text, total: number })),
    }),
  ),
  thread: v.object({ used: number, saved: number, bobbins: number, unit: yards }),
  weight: v.object({
    dry: number,
    wet: number,
    unit: v.picklist(['lb', 'kg']),
    washer: v.object({ machine: v.picklist(['household', 'large', 'laundry']) }),
  }),
  mismatch: alike(number, 'within', 'withinFromOneEnd'),
  time: alike(number, 'snip', 'total'),
  steps: v.array(v.object({ id: text, do: text, detail: text, minutes: number, figures })),
  work: v.object({
    stacks: v.array(v.object({ letter: text, blocks: number })),
    rows: v.array(alike(text, 'name', 'blocks')),
  }),
  layout: v.object({ cells: v.array(text) }),
  why: v.exactOptional(v.array(why)),
});

/** A plan as the page knows it: no view can read what was not checked. */
export type ShownPlan = Frozen<v.InferOutput<typeof planAnswerSchema>>;

export type ShownOption = ShownPlan['options'][number];

/** Does not compile once the contract no longer gives what the page reads. */
export const answerIsBound: PlanAnswer extends ShownPlan ? true : false = true;
