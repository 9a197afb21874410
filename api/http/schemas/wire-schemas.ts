import * as z from 'zod/mini';
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
import { once } from '../once.ts';
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
  return z.number().check(z.gte(least), z.lte(most)).register(z.globalRegistry, { description });
}

/** A whole number within a row of the limits. */
export function counted(limit: NumberLimit, description: string) {
  const { least, most } = NUMBER_LIMITS[limit];
  return z.int().check(z.gte(least), z.lte(most)).register(z.globalRegistry, { description });
}

/** A length as people write it; its range is the core's to check, in millimetres. */
export function lengthOf(description: string) {
  return z
    .union([z.number(), z.string().check(z.minLength(1), z.maxLength(SIZE_LIMITS.lengthText))])
    .register(z.globalRegistry, {
      description: `${description}; a number in \`unit\`, or text such as "8 1/2" or "21.5 cm"`,
    });
}

/** A name that someone gives: no control characters, no half characters. */
export function nameOf(description: string) {
  return z
    .string()
    .check(
      z.minLength(1),
      z.maxLength(SIZE_LIMITS.name),
      z.regex(/^[^\p{Cc}\p{Cs}]*$/u, 'letters, digits and signs on one line'),
    )
    .register(z.globalRegistry, { description });
}

export const unitSchema = once(() =>
  z.enum(['in', 'cm']).register(z.globalRegistry, {
    description: 'Unit of every length in request and answer; inches unless told',
  }),
);
true satisfies Same<z.infer<ReturnType<typeof unitSchema>>, Unit>;

export const grainSchema = once(() =>
  z.enum(['alternating', 'aligned']).register(z.globalRegistry, {
    description: 'Every other block a quarter turn, or all one way',
  }),
);

/** Two sides of something flat. */
export function sidesOf(description: string) {
  return z
    .strictObject({ width: lengthOf('Width'), height: lengthOf('Height') })
    .register(z.globalRegistry, { description });
}

export const shrinkSchema = once(() =>
  z
    .strictObject({
      length: ranged('shrink', 'Along the roll, percent; positive when it gets smaller'),
      width: ranged('shrink', 'Across the roll, percent; positive when it gets smaller'),
    })
    .register(z.globalRegistry, { description: 'Shrinkage by washing' }),
);
true satisfies Same<z.infer<ReturnType<typeof shrinkSchema>>, ShrinkRates>;

export const printSchema = once(() =>
  z
    .strictObject({
      id: nameOf('Name of the print'),
      share: z.exactOptional(ranged('share', 'Weight among the prints; 1 unless told')),
      count: z.exactOptional(counted('count', 'Blocks of this print; where one has it, all must')),
      directional: z.exactOptional(
        z.boolean().register(z.globalRegistry, { description: 'Has an up and a down' }),
      ),
      width: z.exactOptional(lengthOf('Width on its own roll')),
      value: z.exactOptional(ranged('value', 'Lightness, 0 dark to 100 light')),
      color: z.exactOptional(
        z
          .string()
          .check(z.regex(/^#[0-9a-fA-F]{6}$/, 'a colour as #rrggbb'))
          .register(z.globalRegistry, { description: 'Colour for drawings, #rrggbb' }),
      ),
    })
    .register(z.globalRegistry, { description: 'One print of a layer' }),
);
true satisfies Same<z.infer<ReturnType<typeof printSchema>>, Print>;

export const roleSchema = once(() =>
  z.enum(['top', 'middle', 'backing']).register(z.globalRegistry, { description: 'Where it lies' }),
);
true satisfies Same<z.infer<ReturnType<typeof roleSchema>>, Role>;

const fabricNames = FABRICS.map(({ name }) => name);

export const layerSchema = once(() =>
  z
    .strictObject({
      role: roleSchema(),
      fabric: z.exactOptional(
        z.enum(fabricNames).register(z.globalRegistry, { description: 'What it is made of' }),
      ),
      prints: z.exactOptional(
        z
          .union([
            counted('prints', 'How many prints, shared evenly'),
            z.array(printSchema()).check(z.minLength(1), z.maxLength(SIZE_LIMITS.prints)),
          ])
          .register(z.globalRegistry, { description: 'The prints of this layer' }),
      ),
      width: z.exactOptional(lengthOf('Width of the roll, selvages included')),
      selvage: z.exactOptional(lengthOf('Cut away at each edge of the roll')),
      shrink: z.exactOptional(shrinkSchema()),
      shrinkWashes: z.exactOptional(
        counted('washes', 'The wash count that `shrink` was measured at'),
      ),
      prewashed: z.exactOptional(
        z.boolean().register(z.globalRegistry, { description: 'Washed before it is cut' }),
      ),
      gsm: z.exactOptional(ranged('gsm', 'Weight in g/m², whatever the unit')),
      thickness: z.exactOptional(ranged('thickness', 'Thickness in mm, whatever the unit')),
    })
    .register(z.globalRegistry, { description: 'One layer of the sandwich' }),
);
true satisfies Same<z.infer<ReturnType<typeof layerSchema>>, Layer>;

/** The layers of a sandwich, each of one schema. */
export function layersOf<Item extends z.core.$ZodType>(layer: Item) {
  return z
    .array(layer)
    .check(z.minLength(SIZE_LIMITS.layers.least), z.maxLength(SIZE_LIMITS.layers.most))
    .register(z.globalRegistry, {
      description: 'One top, one backing, up to two in the middle; cotton on flannel unless told',
    });
}

export const layersSchema = once(() => layersOf(layerSchema()));

export const cutsSchema = once(() =>
  z
    .array(lengthOf('Side of a block as cut'))
    .check(z.minLength(1), z.maxLength(SIZE_LIMITS.cuts))
    .register(z.globalRegistry, {
      description: 'Cut sizes to consider when block.cut is left out',
    }),
);
true satisfies Same<z.infer<ReturnType<typeof lengthOf>>, Length>;
true satisfies Same<z.infer<ReturnType<typeof sidesOf>>, Record<keyof Pair, Length>>;

const swatchSchema = once(() =>
  z
    .strictObject({
      fabric: z.exactOptional(nameOf('What the person calls the cloth')),
      direction: z
        .enum(['length', 'width'])
        .register(z.globalRegistry, { description: 'Along or across the roll' }),
      before: lengthOf('Between the marks before washing'),
      after: lengthOf('Between the marks after washing'),
      washes: z.exactOptional(counted('washes', 'How often it was washed')),
      diagonals: z.exactOptional(
        z
          .strictObject({
            ac: lengthOf('One diagonal of a marked square after the wash'),
            bd: lengthOf('The other diagonal'),
          })
          .register(z.globalRegistry, { description: 'Both diagonals, to tell the skew' }),
      ),
    })
    .register(z.globalRegistry, { description: 'One measured specimen' }),
);
true satisfies Same<z.infer<ReturnType<typeof swatchSchema>>, Swatch>;

export const swatchesSchema = once(() =>
  z
    .array(swatchSchema())
    .check(z.maxLength(SIZE_LIMITS.swatches))
    .register(z.globalRegistry, { description: 'What was measured' }),
);
