import { planQuilt } from '#core/plan.ts';
import { resolvePlan } from '#core/wish/resolve-plan.ts';
import { bindEndpoint } from '../http/bind-endpoint.ts';
import { costPlan } from '../http/cost-plan.ts';
import { planSchema } from '../http/schemas/plan-schema.ts';

export const plan = bindEndpoint({
  path: '/v1/plan',
  summary:
    'From a wish for a rag quilt to a whole plan: blocks, cloth, thread, weight, hours, work.',
  schema: planSchema,
  resolve: resolvePlan,
  mediaType: 'application/json',
  cost: costPlan,
  write: (understood) => JSON.stringify(planQuilt(understood)),
});
