import { z } from 'zod';
import type { LayoutPrint, LayoutRequest } from '#core/contract.ts';
import { SIZE_LIMITS } from '#core/limits.ts';
import type { Same } from '../same.ts';
import { counted, printSchema } from './wire-schemas.ts';

const layoutPrintSchema = printSchema
  .pick({ id: true, count: true, value: true, color: true })
  .meta({ description: 'One print of a layout' });
true satisfies Same<z.infer<typeof layoutPrintSchema>, LayoutPrint>;

const rowSchema = z
  .string()
  .max(SIZE_LIMITS.layoutRow)
  .meta({ description: 'One row: a letter a block, A the first print, a full stop a free cell' });

/** What `/v1/layout` and `/v1/layout.svg` take. */
export const layoutSchema = z.strictObject({
  columns: counted('layoutSide', 'Blocks across'),
  rows: counted('layoutSide', 'Blocks down'),
  prints: z
    .array(layoutPrintSchema)
    .min(SIZE_LIMITS.layoutPrints)
    .max(SIZE_LIMITS.prints)
    .meta({ description: 'The prints; counts left out share the grid evenly' }),
  pattern: z
    .enum(['scattered', 'checkerboard', 'diagonal', 'rings'])
    .meta({ description: 'How prints are laid; scattered unless told' })
    .exactOptional(),
  touch: z
    .enum(['corners', 'sides'])
    .meta({
      description: 'Whether blocks that meet at a corner touch; corners with four prints or more',
    })
    .exactOptional(),
  fixed: z
    .array(rowSchema)
    .max(SIZE_LIMITS.layoutRow)
    .meta({ description: 'Blocks that stay where they are; a full grid is only judged' })
    .exactOptional(),
  seed: counted('seed', 'Another number, another layout').exactOptional(),
});
true satisfies Same<z.infer<typeof layoutSchema>, LayoutRequest>;
