import { resolveYardage } from '#core/wish/resolve-yardage.ts';
import { planYardage } from '#core/yardage.ts';
import { bindEndpoint } from '../http/bind-endpoint.ts';
import { costYardage } from '../http/cost-yardage.ts';
import { yardageSchema } from '../http/schemas/yardage-schema.ts';

export const yardage = bindEndpoint({
  path: '/v1/yardage',
  summary:
    'The least cloth to buy for pieces cut in strips, off a roll or from what a shop offers.',
  schema: yardageSchema,
  resolve: resolveYardage,
  mediaType: 'application/json',
  cost: costYardage,
  write: (understood) => JSON.stringify(planYardage(understood)),
});
