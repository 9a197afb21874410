import * as z from 'zod';
import type { PlanRequest, Target } from '#core/contract.ts';
import { SIZES } from '#core/tables/sizes.ts';
import type { Same } from '../same.ts';
import * as wire from './wire-schemas.ts';

const { counted, lengthOf, ranged } = wire;

const sizeNames = [...new Set(SIZES.map(({ name }) => name))];

/** Keys of every way to say the size: one beside another way's makes the wish unclear, not unknown. */
const TARGET_KEYS = ['width', 'height', 'at', 'size', 'region', 'bed', 'columns', 'rows'];

function oneWay<Shape extends z.core.$ZodLooseShape>(shape: Shape) {
  return z.strictObject(shape, {
    error: (issue) =>
      issue.code === 'unrecognized_keys' && TARGET_KEYS.some((key) => issue.keys?.includes(key))
        ? 'target-unclear'
        : undefined,
  });
}

export const targetSchema = z
  .union(
    [
      oneWay({
        width: lengthOf('Width wished for'),
        height: lengthOf('Height wished for'),
        at: z.enum(['washed', 'sewn']).meta({ description: 'washed unless told' }).exactOptional(),
      }),
      oneWay({
        size: z.enum(sizeNames).meta({ description: 'A quilt or bed by its name' }),
        region: z
          .enum(['us', 'uk', 'eu'])
          .meta({ description: 'Whose beds; us for inches and eu for centimetres unless told' })
          .exactOptional(),
      }),
      oneWay({
        bed: z
          .strictObject({
            width: lengthOf('Width of the mattress top'),
            length: lengthOf('Length of the mattress top'),
            drop: lengthOf('Cloth hanging at each side').exactOptional(),
            footDrop: lengthOf('Cloth hanging at the foot').exactOptional(),
          })
          .meta({ description: 'The measures of a bed' }),
      }),
      oneWay({
        columns: counted('columns', 'Blocks across'),
        rows: counted('rows', 'Blocks down'),
      }),
    ],
    { error: 'target-unclear' },
  )
  .meta({ description: 'The size wished for, in one of four ways' });
true satisfies Same<z.infer<typeof targetSchema>, Target>;

const blockSchema = z
  .strictObject({
    cut: lengthOf('Side of a block as cut').exactOptional(),
    seam: lengthOf('Seam allowance').exactOptional(),
    snipDepth: lengthOf('Depth of a snip').exactOptional(),
    snipPitch: lengthOf('From snip to snip').exactOptional(),
  })
  .meta({ description: 'One block' });

const stitchSchema = z
  .strictObject({
    length: lengthOf('Length of a stitch').exactOptional(),
    tail: lengthOf('Thread cut off where a seam starts or ends').exactOptional(),
    link: lengthOf('Thread between two chained blocks').exactOptional(),
    chained: z.boolean().meta({ description: 'Sewn one after the other' }).exactOptional(),
    borderPasses: counted('borderPasses', 'Rounds of stitching at the edge').exactOptional(),
    bobbin: lengthOf('Thread on one bobbin').exactOptional(),
    ratio: ranged('ratio', 'Thread per length sewn, measured by unpicking').exactOptional(),
  })
  .meta({ description: 'How it is sewn' });

const paceSchema = z
  .strictObject({
    cutPiece: ranged('pace', 'Minutes to cut a piece').exactOptional(),
    stackBlock: ranged('pace', 'Minutes to stack a block').exactOptional(),
    sewMetre: ranged('pace', 'Minutes to sew a metre').exactOptional(),
    handleSeam: ranged('pace', 'Minutes to take up and lay down a seam').exactOptional(),
    snip: ranged('pace', 'Minutes a snip').exactOptional(),
    layBlock: ranged('pace', 'Minutes to lay out a block').exactOptional(),
    trimBlock: ranged('pace', 'Minutes to trim a block').exactOptional(),
  })
  .meta({ description: 'Minutes of work' });

const toleranceSchema = z
  .strictObject({
    seam: lengthOf('One standard deviation of a seam').exactOptional(),
    cut: lengthOf('One standard deviation of a cut side').exactOptional(),
    ease: lengthOf('How far a row end may be off').exactOptional(),
  })
  .meta({ description: 'How true a person cuts and sews' });

/** What a plan may be asked for; the rules between its parts are the core's. */
export const planSchema = z.strictObject({
  unit: wire.unitSchema.exactOptional(),
  target: targetSchema,
  block: blockSchema.exactOptional(),
  cuts: wire.cutsSchema.exactOptional(),
  layers: wire.layersSchema.exactOptional(),
  swatches: wire.swatchesSchema.exactOptional(),
  grain: wire.grainSchema.exactOptional(),
  washes: counted('washes', 'Which wash the washed size is for').exactOptional(),
  spare: ranged('spare', 'Extra pieces, percent').exactOptional(),
  stitch: stitchSchema.exactOptional(),
  pace: paceSchema.exactOptional(),
  tolerance: toleranceSchema.exactOptional(),
  explain: z.boolean().meta({ description: 'Tell how each figure came about' }).exactOptional(),
});
true satisfies Same<z.infer<typeof planSchema>, PlanRequest>;
