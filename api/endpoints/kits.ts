import * as z from 'zod/mini';
import type { Fibre, KitBolt, KitCosts, KitsRequest } from '#core/contract.ts';
import { planKits } from '#core/kits.ts';
import { SIZE_LIMITS } from '#core/limits.ts';
import { resolveKits } from '#core/wish/resolve-kits.ts';
import { bindEndpoint } from '../http/bind-endpoint.ts';
import { once } from '../http/once.ts';
import type { Same } from '../http/same.ts';
import { planSchema } from '../http/schemas/plan-schema.ts';
import * as wire from '../http/schemas/wire-schemas.ts';

const { counted, lengthOf, nameOf, ranged } = wire;

const currencySchema = once(() =>
  z
    .string()
    .check(z.regex(/^[A-Z]{3}$/, 'the three letters of ISO 4217, such as USD'))
    .register(z.globalRegistry, { description: 'Currency, ISO 4217' }),
);

const boltSchema = once(() =>
  z
    .strictObject({
      id: nameOf('Name of the bolt'),
      role: wire.roleSchema(),
      print: z.exactOptional(nameOf('The print it shows; its own id unless told')),
      width: lengthOf('Width of the roll, selvages included'),
      length: lengthOf('What is on the bolt'),
      selvage: z.exactOptional(lengthOf('Cut away at each edge')),
      squaring: z.exactOptional(lengthOf('Cut away to square the end')),
      cost: z.exactOptional(counted('money', 'Of a yard (in) or a metre (cm), in minor units')),
      currency: z.exactOptional(currencySchema()),
    })
    .register(z.globalRegistry, { description: 'One bolt to cut from' }),
);
true satisfies Same<z.infer<ReturnType<typeof boltSchema>>, KitBolt>;

const costsSchema = once(() =>
  z
    .strictObject({
      packaging: z.exactOptional(counted('money', 'Of one kit, in minor units')),
      labour: z.exactOptional(counted('money', 'Of one kit, in minor units')),
      overhead: z.exactOptional(counted('money', 'Of one kit, in minor units')),
      margin: z.exactOptional(ranged('margin', 'Percent of the price that is not cost')),
      markup: z.exactOptional(ranged('markup', 'Percent added to the cost')),
      price: z.exactOptional(counted('money', 'Of one kit, in minor units')),
    })
    .register(z.globalRegistry, {
      description: 'Money of one kit; one of margin, markup and price at most',
    }),
);
true satisfies Same<z.infer<ReturnType<typeof costsSchema>>, KitCosts>;

const fibreSchema = once(() =>
  z.strictObject({
    fibre: nameOf('Name of the fibre'),
    percent: ranged('fibre', 'Percent by mass'),
  }),
);
true satisfies Same<z.infer<ReturnType<typeof fibreSchema>>, Fibre>;

const fibresSchema = once(() =>
  z
    .array(fibreSchema())
    .check(z.minLength(1), z.maxLength(SIZE_LIMITS.fibres))
    .register(z.globalRegistry, { description: 'What the cloth is made of; percents sum to 100' }),
);

export const kitsSchema = once(() =>
  z.strictObject({
    unit: z.exactOptional(wire.unitSchema()),
    // A copy of its own: what is said of it here must not be said of the plan itself.
    plan: planSchema().check(
      z.meta({ description: 'The quilt that the kits are for, as for /v1/plan' }),
    ),
    kits: z.exactOptional(counted('kits', 'Kits wanted; as many as can be made unless told')),
    bolts: z
      .array(boltSchema())
      .check(z.minLength(1), z.maxLength(SIZE_LIMITS.bolts))
      .register(z.globalRegistry, { description: 'The bolts' }),
    perKit: z.exactOptional(
      z
        .strictObject({
          distinctPrints: z.exactOptional(counted('distinctPrints', 'Fewest prints in each kit')),
          mostOfOne: z.exactOptional(counted('mostOfOne', 'Most blocks of one print in each kit')),
          spare: z.exactOptional(counted('kitSpare', 'Extra squares of each layer in each kit')),
        })
        .register(z.globalRegistry, { description: 'What each kit holds' }),
    ),
    costs: z.exactOptional(costsSchema()),
    currency: z.exactOptional(currencySchema()),
    fibres: z.exactOptional(
      z
        .strictObject({
          top: z.exactOptional(fibresSchema()),
          middle: z.exactOptional(fibresSchema()),
          backing: z.exactOptional(fibresSchema()),
        })
        .register(z.globalRegistry, {
          description: 'Fibres by role; the usual ones of the fabrics unless told',
        }),
    ),
  }),
);
true satisfies Same<z.infer<ReturnType<typeof kitsSchema>>, KitsRequest>;

export const kits = bindEndpoint({
  path: '/v1/kits',
  summary:
    'From bolts to kits: the most that can be cut, what is in each, money, weight and label.',
  schema: kitsSchema,
  resolve: resolveKits,
  mediaType: 'application/json',
  write: (understood) => JSON.stringify(planKits(understood)),
});
