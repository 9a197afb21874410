import * as v from 'valibot';
import type { PlanAnswer } from '#core/contract.ts';
import { SIZE_LIMITS } from '#core/limits.ts';
import { FABRIC_NAMES, SIZE_NAMES } from './names.ts';
import type { SameShape } from './same-shape.ts';

/** Every number has its bounds, since JSON can write one that reads as infinite. */
const number = v.pipe(v.number(), v.minValue(-1e9), v.maxValue(1e9));
const count = v.pipe(number, v.integer(), v.minValue(0));
const text = v.pipe(v.string(), v.maxLength(2000));
const maybe = v.exactOptional;
const list = <Item extends v.GenericSchema>(item: Item) =>
  v.pipe(v.array(item), v.maxLength(SIZE_LIMITS.blocks));
/** An object whose fields are all of one kind. */
const all = <Schema extends v.GenericSchema, Key extends string>(schema: Schema, ...keys: Key[]) =>
  v.object(Object.fromEntries(keys.map((key) => [key, schema])) as Record<Key, Schema>);

const pair = all(number, 'width', 'height');
const unit = v.picklist(['in', 'cm']);
const yards = v.picklist(['yd', 'm']);
const role = v.picklist(['top', 'middle', 'backing']);
const fabric = v.picklist(FABRIC_NAMES);
const caution = v.picklist([
  'rotary-cutter',
  'repetitive-snipping',
  'needle-at-crossings',
  'snip-near-seam',
  'infant-sleep',
  'dryer-lint',
  'washer-load',
  'flammability',
  'selling-children',
  'label-rules',
  'dye-bleed',
  'unmeasured-shrink',
]);

const input = v.object({
  unit,
  target: v.union([
    v.object({ width: number, height: number, at: v.picklist(['washed', 'sewn']) }),
    v.object({
      size: v.picklist(SIZE_NAMES),
      region: v.picklist(['us', 'uk', 'eu']),
    }),
    v.object({ bed: all(number, 'width', 'length', 'drop', 'footDrop') }),
    all(count, 'columns', 'rows'),
  ]),
  block: v.object({ cut: maybe(number), seam: number, snipDepth: number, snipPitch: number }),
  cuts: list(number),
  layers: list(
    v.object({
      role,
      fabric,
      prints: list(
        v.object({
          id: text,
          share: maybe(number),
          count: maybe(count),
          directional: v.boolean(),
          width: number,
          value: maybe(number),
          color: maybe(v.pipe(v.string(), v.regex(/^#[\da-f]{6}$/i))),
        }),
      ),
      width: number,
      selvage: number,
      shrink: all(number, 'length', 'width'),
      shrinkWashes: count,
      prewashed: v.boolean(),
      gsm: number,
      thickness: number,
    }),
  ),
  grain: v.picklist(['alternating', 'aligned']),
  washes: count,
  spare: number,
  stitch: v.object({
    length: number,
    tail: number,
    link: number,
    chained: v.boolean(),
    borderPasses: count,
    bobbin: number,
    ratio: maybe(number),
  }),
  pace: all(number, 'cutPiece', 'stackBlock', 'sewMetre', 'handleSeam', 'snip', 'layBlock', 'trimBlock'),
  tolerance: all(number, 'seam', 'cut', 'ease'),
  explain: v.boolean(),
});

/** An answer of `/v1/plan`. Fields that a later engine adds are let pass. */
export const planAnswerSchema = v.object({
  engine: text,
  input,
  assumptions: list(
    v.object({
      path: text,
      value: v.union([text, number, v.boolean()]),
      why: text,
      source: maybe(text),
    }),
  ),
  cautions: list(
    v.object({
      code: caution,
      severity: v.picklist(['note', 'care', 'danger']),
      text,
      source: maybe(text),
    }),
  ),
  links: v.object({ self: text, page: text, image: maybe(text) }),
  grid: all(count, 'columns', 'rows', 'blocks'),
  block: all(number, 'cut', 'seam', 'face', 'snipDepth', 'snipPitch', 'clearance'),
  size: v.object({
    sewn: pair,
    stitchLine: pair,
    washed: v.object({ width: number, height: number, low: pair, high: pair }),
    change: pair,
  }),
  wish: v.object({ width: number, height: number, at: v.picklist(['washed', 'sewn']) }),
  fit: pair,
  options: list(
    v.object({
      cut: number,
      columns: count,
      rows: count,
      blocks: count,
      washed: pair,
      fit: pair,
      fabric: number,
      minutes: number,
      chosen: v.boolean(),
    }),
  ),
  fabrics: list(
    v.object({
      role,
      fabric,
      print: maybe(text),
      pieces: count,
      spare: count,
      usableWidth: number,
      perStrip: count,
      strips: count,
      length: number,
      buy: v.object({ amount: number, unit: yards, text }),
      bound: number,
      waste: number,
    }),
  ),
  thread: v.object({
    ...all(number, 'quilting', 'joins', 'rows', 'border', 'seamLength', 'ratio').entries,
    ...all(number, 'used', 'singly', 'saved', 'bobbins').entries,
    unit: yards,
  }),
  fringe: all(number, 'snipsPerSide', 'snips', 'snipsJoined', 'minutes', 'minutesJoined'),
  bulk: v.object({
    seamLayers: count,
    crossingLayers: count,
    crossingThickness: number,
    needle: text,
  }),
  weight: v.object({
    dry: number,
    wet: number,
    unit: v.picklist(['lb', 'kg']),
    washer: v.object({
      machine: v.picklist(['household', 'large', 'laundry']),
      drumLitres: number,
    }),
  }),
  mismatch: all(number, 'rowDeviation', 'perEndFromOneEnd', 'perEndFromCentre', 'within', 'withinFromOneEnd'),
  time: v.object({
    ...all(number, 'cut', 'stack', 'quilt', 'snip', 'layout', 'joins', 'rows').entries,
    ...all(number, 'border', 'trim', 'total').entries,
  }),
  steps: list(
    v.object({
      id: text,
      stage: v.picklist(['prepare', 'cut', 'stack', 'quilt', 'snip', 'layout', 'join', 'border', 'wash']),
      do: text,
      count: number,
      detail: text,
      cautions: list(caution),
    }),
  ),
  layout: v.object({ cells: list(text), touching: all(number, 'sides', 'corners') }),
  why: maybe(
    list(
      v.object({ path: text, formula: text, numbers: v.record(text, number), value: number, source: text }),
    ),
  ),
});

/** Does not compile once the schema and the contract part. */
export const answerIsBound: SameShape<v.InferOutput<typeof planAnswerSchema>, PlanAnswer> = true;
