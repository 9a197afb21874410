import * as z from 'zod';
import type {
  Layer,
  Length,
  Pair,
  Print,
  Role,
  ShrinkRates,
  Swatch,
  Unit,
} from '#core/contract.ts';
import { NUMBER_LIMITS, type NumberLimit, SIZE_LIMITS } from '#core/limits.ts';
import { FABRICS } from '#core/tables/fabrics.ts';
import type { Same } from '../same.ts';

/**
 * Names whose value is text even where it looks like a number: a print may be called `12`.
 * Each schema of free text that is no length stands under one of them.
 */
export const TEXT_KEYS: ReadonlySet<string> = new Set([
  'id',
  'fabric',
  'color',
  'print',
  'fibre',
  'currency',
]);

/** A number within a row of the limits. */
export function ranged(limit: NumberLimit, description: string) {
  const { least, most } = NUMBER_LIMITS[limit];
  return z.number().min(least).max(most).meta({ description });
}

/** A whole number within a row of the limits. */
export function counted(limit: NumberLimit, description: string) {
  const { least, most } = NUMBER_LIMITS[limit];
  return z.int().min(least).max(most).meta({ description });
}

/** A length as people write it; its range is the core's to check, in millimetres. */
export function lengthOf(description: string) {
  return z.union([z.number(), z.string().min(1).max(SIZE_LIMITS.lengthText)]).meta({
    description: `${description}; a number in \`unit\`, or text such as "8 1/2" or "21.5 cm"`,
  });
}

/** A name that someone gives: no control characters, no half characters. */
export function nameOf(description: string) {
  return z
    .string()
    .min(1)
    .max(SIZE_LIMITS.name)
    .regex(/^[^\p{Cc}\p{Cs}]*$/u, 'letters, digits and signs on one line')
    .meta({ description });
}

export const unitSchema = z
  .enum(['in', 'cm'])
  .meta({ description: 'Unit of every length in request and answer; inches unless told' });
true satisfies Same<z.infer<typeof unitSchema>, Unit>;

export const grainSchema = z
  .enum(['alternating', 'aligned'])
  .meta({ description: 'Every other block a quarter turn, or all one way' });

/** Two sides of something flat. */
export function sidesOf(description: string) {
  return z
    .strictObject({ width: lengthOf('Width'), height: lengthOf('Height') })
    .meta({ description });
}

export const shrinkSchema = z
  .strictObject({
    length: ranged('shrink', 'Along the roll, percent; positive when it gets smaller'),
    width: ranged('shrink', 'Across the roll, percent; positive when it gets smaller'),
  })
  .meta({ description: 'Shrinkage by washing' });
true satisfies Same<z.infer<typeof shrinkSchema>, ShrinkRates>;

export const printSchema = z
  .strictObject({
    id: nameOf('Name of the print'),
    share: ranged('share', 'Weight among the prints; 1 unless told').exactOptional(),
    count: counted('count', 'Blocks of this print; where one has it, all must').exactOptional(),
    directional: z.boolean().meta({ description: 'Has an up and a down' }).exactOptional(),
    width: lengthOf('Width on its own roll').exactOptional(),
    value: ranged('value', 'Lightness, 0 dark to 100 light').exactOptional(),
    color: z
      .string()
      .regex(/^#[0-9a-fA-F]{6}$/, 'a colour as #rrggbb')
      .meta({ description: 'Colour for drawings, #rrggbb' })
      .exactOptional(),
  })
  .meta({ description: 'One print of a layer' });
true satisfies Same<z.infer<typeof printSchema>, Print>;

export const roleSchema = z
  .enum(['top', 'middle', 'backing'])
  .meta({ description: 'Where it lies' });
true satisfies Same<z.infer<typeof roleSchema>, Role>;

const fabricNames = FABRICS.map(({ name }) => name);

export const layerSchema = z
  .strictObject({
    role: roleSchema,
    fabric: z.enum(fabricNames).meta({ description: 'What it is made of' }).exactOptional(),
    prints: z
      .union([
        counted('prints', 'How many prints, shared evenly'),
        z.array(printSchema).min(1).max(SIZE_LIMITS.prints),
      ])
      .meta({ description: 'The prints of this layer' })
      .exactOptional(),
    width: lengthOf('Width of the roll, selvages included').exactOptional(),
    selvage: lengthOf('Cut away at each edge of the roll').exactOptional(),
    shrink: shrinkSchema.exactOptional(),
    shrinkWashes: counted('washes', 'The wash count that `shrink` was measured at').exactOptional(),
    prewashed: z.boolean().meta({ description: 'Washed before it is cut' }).exactOptional(),
    gsm: ranged('gsm', 'Weight in g/m², whatever the unit').exactOptional(),
    thickness: ranged('thickness', 'Thickness in mm, whatever the unit').exactOptional(),
  })
  .meta({ description: 'One layer of the sandwich' });
true satisfies Same<z.infer<typeof layerSchema>, Layer>;

export const layersSchema = z
  .array(layerSchema)
  .min(SIZE_LIMITS.layers.least)
  .max(SIZE_LIMITS.layers.most)
  .meta({
    description: 'One top, one backing, up to two in the middle; cotton on flannel unless told',
  });

export const cutsSchema = z
  .array(lengthOf('Side of a block as cut'))
  .min(1)
  .max(SIZE_LIMITS.cuts)
  .meta({ description: 'Cut sizes to consider when block.cut is left out' });
true satisfies Same<z.infer<ReturnType<typeof lengthOf>>, Length>;
true satisfies Same<z.infer<ReturnType<typeof sidesOf>>, Record<keyof Pair, Length>>;

const swatchSchema = z
  .strictObject({
    fabric: nameOf('What the person calls the cloth').exactOptional(),
    direction: z.enum(['length', 'width']).meta({ description: 'Along or across the roll' }),
    before: lengthOf('Between the marks before washing'),
    after: lengthOf('Between the marks after washing'),
    washes: counted('washes', 'How often it was washed').exactOptional(),
    diagonals: z
      .strictObject({
        ac: lengthOf('One diagonal of a marked square after the wash'),
        bd: lengthOf('The other diagonal'),
      })
      .meta({ description: 'Both diagonals, to tell the skew' })
      .exactOptional(),
  })
  .meta({ description: 'One measured specimen' });
true satisfies Same<z.infer<typeof swatchSchema>, Swatch>;

export const swatchesSchema = z
  .array(swatchSchema)
  .max(SIZE_LIMITS.swatches)
  .meta({ description: 'What was measured' });
