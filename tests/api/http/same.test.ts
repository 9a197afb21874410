import { expect, test } from 'vitest';
import { z } from 'zod';
import type { Same } from '../../../api/http/same.ts';

interface Wanted {
  readonly a: number;
  readonly list?: readonly { readonly b: string }[];
}

const good = z.strictObject({
  a: z.number(),
  list: z.array(z.strictObject({ b: z.string() })).exactOptional(),
});
const tooMany = good.extend({ extra: z.number().exactOptional() });
const tooFew = good.omit({ list: true });
const looser = good.extend({ a: z.number().exactOptional() });
const wider = good.extend({ a: z.union([z.number(), z.string()]) });
const lax = good.extend({ list: z.array(z.strictObject({ b: z.string() })).optional() });

// The claims are the compiler's to check: with any of them wrong this file does not type-check.
true satisfies Same<z.infer<typeof good>, Wanted>;
false satisfies Same<z.infer<typeof tooMany>, Wanted>;
false satisfies Same<z.infer<typeof tooFew>, Wanted>;
false satisfies Same<z.infer<typeof looser>, Wanted>;
false satisfies Same<z.infer<typeof wider>, Wanted>;
false satisfies Same<z.infer<typeof lax>, Wanted>;

test('Same is false for each of the drifts above, all of which take what is wanted', () => {
  const wanted: Wanted = { a: 1 };
  for (const schema of [good, tooMany, tooFew, looser, wider, lax]) {
    expect(schema.safeParse(wanted).success).toBe(true);
  }
});
