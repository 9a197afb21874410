import * as z from 'zod/mini';
import type { LayoutPrint, LayoutRequest } from '#core/contract.ts';
import { SIZE_LIMITS } from '#core/limits.ts';
import { once } from '../once.ts';
import type { Same } from '../same.ts';
import { counted, printSchema } from './wire-schemas.ts';

const layoutPrintSchema = once(() => {
  const { id, count, value, color } = printSchema().shape;
  return z
    .strictObject({ id, count, value, color })
    .register(z.globalRegistry, { description: 'One print of a layout' });
});
true satisfies Same<z.infer<ReturnType<typeof layoutPrintSchema>>, LayoutPrint>;

const rowSchema = once(() =>
  z.string().check(z.maxLength(SIZE_LIMITS.layoutRow)).register(z.globalRegistry, {
    description: 'One row: a letter a block, A the first print, a full stop a free cell',
  }),
);

/** What `/v1/layout` and `/v1/layout.svg` take. */
export const layoutSchema = once(() =>
  z.strictObject({
    columns: counted('layoutSide', 'Blocks across'),
    rows: counted('layoutSide', 'Blocks down'),
    prints: z
      .array(layoutPrintSchema())
      .check(z.minLength(SIZE_LIMITS.layoutPrints), z.maxLength(SIZE_LIMITS.prints))
      .register(z.globalRegistry, {
        description: 'The prints; counts left out share the grid evenly',
      }),
    pattern: z.exactOptional(
      z
        .enum(['scattered', 'checkerboard', 'diagonal', 'rings'])
        .register(z.globalRegistry, { description: 'How prints are laid; scattered unless told' }),
    ),
    touch: z.exactOptional(
      z.enum(['corners', 'sides']).register(z.globalRegistry, {
        description: 'Whether blocks that meet at a corner touch; corners with four prints or more',
      }),
    ),
    fixed: z.exactOptional(
      z.array(rowSchema()).check(z.maxLength(SIZE_LIMITS.layoutRow)).register(z.globalRegistry, {
        description: 'Blocks that stay where they are; a full grid is only judged',
      }),
    ),
    seed: z.exactOptional(counted('seed', 'Another number, another layout')),
  }),
);
true satisfies Same<z.infer<ReturnType<typeof layoutSchema>>, LayoutRequest>;
