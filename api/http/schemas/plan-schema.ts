import * as z from 'zod/mini';
import type { PlanLayer, PlanRequest, Target } from '#core/contract.ts';
import { SIZES } from '#core/tables/sizes.ts';
import { once } from '../once.ts';
import type { Same } from '../same.ts';
import { offersSchema } from './offers-schema.ts';
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

export const targetSchema = once(() =>
  z
    .union(
      [
        oneWay({
          width: lengthOf('Width wished for'),
          height: lengthOf('Height wished for'),
          at: z.exactOptional(
            z
              .enum(['washed', 'sewn'])
              .register(z.globalRegistry, { description: 'washed unless told' }),
          ),
        }),
        oneWay({
          size: z
            .enum(sizeNames)
            .register(z.globalRegistry, { description: 'A quilt or bed by its name' }),
          region: z.exactOptional(
            z.enum(['us', 'uk', 'eu']).register(z.globalRegistry, {
              description: 'Whose beds; us for inches and eu for centimetres unless told',
            }),
          ),
        }),
        oneWay({
          bed: z
            .strictObject({
              width: lengthOf('Width of the mattress top'),
              length: lengthOf('Length of the mattress top'),
              drop: z.exactOptional(lengthOf('Cloth hanging at each side')),
              footDrop: z.exactOptional(lengthOf('Cloth hanging at the foot')),
            })
            .register(z.globalRegistry, { description: 'The measures of a bed' }),
        }),
        oneWay({
          columns: counted('columns', 'Blocks across'),
          rows: counted('rows', 'Blocks down'),
        }),
      ],
      { error: 'target-unclear' },
    )
    .register(z.globalRegistry, { description: 'The size wished for, in one of four ways' }),
);
true satisfies Same<z.infer<ReturnType<typeof targetSchema>>, Target>;

const blockSchema = once(() =>
  z
    .strictObject({
      cut: z.exactOptional(lengthOf('Side of a block as cut')),
      seam: z.exactOptional(lengthOf('Seam allowance')),
      snipDepth: z.exactOptional(lengthOf('Depth of a snip')),
      snipPitch: z.exactOptional(lengthOf('From snip to snip')),
    })
    .register(z.globalRegistry, { description: 'One block' }),
);

const stitchSchema = once(() =>
  z
    .strictObject({
      length: z.exactOptional(lengthOf('Length of a stitch')),
      tail: z.exactOptional(lengthOf('Thread cut off where a seam starts or ends')),
      link: z.exactOptional(lengthOf('Thread between two chained blocks')),
      chained: z.exactOptional(
        z.boolean().register(z.globalRegistry, { description: 'Sewn one after the other' }),
      ),
      borderPasses: z.exactOptional(counted('borderPasses', 'Rounds of stitching at the edge')),
      bobbin: z.exactOptional(lengthOf('Thread on one bobbin')),
      ratio: z.exactOptional(ranged('ratio', 'Thread per length sewn, measured by unpicking')),
    })
    .register(z.globalRegistry, { description: 'How it is sewn' }),
);

const paceSchema = once(() =>
  z
    .strictObject({
      cutPiece: z.exactOptional(ranged('pace', 'Minutes to cut a piece')),
      stackBlock: z.exactOptional(ranged('pace', 'Minutes to stack a block')),
      sewMetre: z.exactOptional(ranged('pace', 'Minutes to sew a metre')),
      handleSeam: z.exactOptional(ranged('pace', 'Minutes to take up and lay down a seam')),
      snip: z.exactOptional(ranged('pace', 'Minutes a snip')),
      layBlock: z.exactOptional(ranged('pace', 'Minutes to lay out a block')),
      trimBlock: z.exactOptional(ranged('pace', 'Minutes to trim a block')),
    })
    .register(z.globalRegistry, { description: 'Minutes of work' }),
);

const toleranceSchema = once(() =>
  z
    .strictObject({
      seam: z.exactOptional(lengthOf('One standard deviation of a seam')),
      cut: z.exactOptional(lengthOf('One standard deviation of a cut side')),
      ease: z.exactOptional(lengthOf('How far a row end may be off')),
    })
    .register(z.globalRegistry, { description: 'How true a person cuts and sews' }),
);

const planLayerSchema = once(() =>
  z
    .extend(wire.layerSchema(), { offers: z.exactOptional(offersSchema()) })
    .register(z.globalRegistry, {
      description: 'One layer of the sandwich; each of its prints is bought by itself',
    }),
);
true satisfies Same<z.infer<ReturnType<typeof planLayerSchema>>, PlanLayer>;

/** What a plan may be asked for; the rules between its parts are the core's. */
export const planSchema = once(() =>
  z.strictObject({
    unit: z.exactOptional(wire.unitSchema()),
    target: targetSchema(),
    block: z.exactOptional(blockSchema()),
    cuts: z.exactOptional(wire.cutsSchema()),
    layers: z.exactOptional(wire.layersOf(planLayerSchema())),
    swatches: z.exactOptional(wire.swatchesSchema()),
    grain: z.exactOptional(wire.grainSchema()),
    washes: z.exactOptional(counted('washes', 'Which wash the washed size is for')),
    spare: z.exactOptional(ranged('spare', 'Extra pieces, percent')),
    stitch: z.exactOptional(stitchSchema()),
    pace: z.exactOptional(paceSchema()),
    tolerance: z.exactOptional(toleranceSchema()),
    infant: z.exactOptional(
      z
        .boolean()
        .register(z.globalRegistry, { description: 'Meant for a child under twelve months' }),
    ),
    pupils: z.exactOptional(counted('pupils', 'Makers of this quilt in a class')),
    explain: z.exactOptional(
      z.boolean().register(z.globalRegistry, { description: 'Tell how each figure came about' }),
    ),
  }),
);
true satisfies Same<z.infer<ReturnType<typeof planSchema>>, PlanRequest>;
