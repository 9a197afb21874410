import * as z from 'zod';
import type { Fibre, KitBolt, KitCosts, KitsRequest } from '#core/contract.ts';
import { planKits } from '#core/kits.ts';
import { SIZE_LIMITS } from '#core/limits.ts';
import { resolveKits } from '#core/wish/resolve-kits.ts';
import { bindEndpoint } from '../http/bind-endpoint.ts';
import type { Same } from '../http/same.ts';
import { planSchema } from '../http/schemas/plan-schema.ts';
import * as wire from '../http/schemas/wire-schemas.ts';

const { counted, lengthOf, nameOf, ranged } = wire;

const currencySchema = z
  .string()
  .regex(/^[A-Z]{3}$/, 'the three letters of ISO 4217, such as USD')
  .meta({ description: 'Currency, ISO 4217' });

const boltSchema = z
  .strictObject({
    id: nameOf('Name of the bolt'),
    role: wire.roleSchema,
    print: nameOf('The print it shows; its own id unless told').exactOptional(),
    width: lengthOf('Width of the roll, selvages included'),
    length: lengthOf('What is on the bolt'),
    selvage: lengthOf('Cut away at each edge').exactOptional(),
    squaring: lengthOf('Cut away to square the end').exactOptional(),
    cost: counted('money', 'Of a yard (in) or a metre (cm), in minor units').exactOptional(),
    currency: currencySchema.exactOptional(),
  })
  .meta({ description: 'One bolt to cut from' });
true satisfies Same<z.infer<typeof boltSchema>, KitBolt>;

const costsSchema = z
  .strictObject({
    packaging: counted('money', 'Of one kit, in minor units').exactOptional(),
    labour: counted('money', 'Of one kit, in minor units').exactOptional(),
    overhead: counted('money', 'Of one kit, in minor units').exactOptional(),
    margin: ranged('margin', 'Percent of the price that is not cost').exactOptional(),
    markup: ranged('markup', 'Percent added to the cost').exactOptional(),
    price: counted('money', 'Of one kit, in minor units').exactOptional(),
  })
  .meta({ description: 'Money of one kit; one of margin, markup and price at most' });
true satisfies Same<z.infer<typeof costsSchema>, KitCosts>;

const fibreSchema = z.strictObject({
  fibre: nameOf('Name of the fibre'),
  percent: ranged('fibre', 'Percent by mass'),
});
true satisfies Same<z.infer<typeof fibreSchema>, Fibre>;

const fibresSchema = z
  .array(fibreSchema)
  .min(1)
  .max(SIZE_LIMITS.fibres)
  .meta({ description: 'What the cloth is made of; percents sum to 100' });

export const kitsSchema = z.strictObject({
  unit: wire.unitSchema.exactOptional(),
  plan: planSchema.meta({ description: 'The quilt that the kits are for, as for /v1/plan' }),
  kits: counted('kits', 'Kits wanted; as many as can be made unless told').exactOptional(),
  bolts: z.array(boltSchema).min(1).max(SIZE_LIMITS.bolts).meta({ description: 'The bolts' }),
  perKit: z
    .strictObject({
      distinctPrints: counted('distinctPrints', 'Fewest prints in each kit').exactOptional(),
      mostOfOne: counted('mostOfOne', 'Most blocks of one print in each kit').exactOptional(),
      spare: counted('kitSpare', 'Extra squares of each layer in each kit').exactOptional(),
    })
    .meta({ description: 'What each kit holds' })
    .exactOptional(),
  costs: costsSchema.exactOptional(),
  currency: currencySchema.exactOptional(),
  fibres: z
    .strictObject({
      top: fibresSchema.exactOptional(),
      middle: fibresSchema.exactOptional(),
      backing: fibresSchema.exactOptional(),
    })
    .meta({ description: 'Fibres by role; the usual ones of the fabrics unless told' })
    .exactOptional(),
});
true satisfies Same<z.infer<typeof kitsSchema>, KitsRequest>;

export const kits = bindEndpoint({
  path: '/v1/kits',
  summary:
    'From bolts to kits: the most that can be cut, what is in each, money, weight and label.',
  schema: kitsSchema,
  resolve: resolveKits,
  mediaType: 'application/json',
  write: (understood) => JSON.stringify(planKits(understood)),
});
