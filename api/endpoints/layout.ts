import { planLayout } from '#core/layout.ts';
import { resolveLayout } from '#core/wish/resolve-layout.ts';
import { bindEndpoint } from '../http/bind-endpoint.ts';
import { layoutSchema } from '../http/schemas/layout-schema.ts';

export const layout = bindEndpoint({
  path: '/v1/layout',
  summary:
    'Where each print goes so that like blocks touch as little as can be, and what is proven of it.',
  schema: layoutSchema,
  resolve: resolveLayout,
  mediaType: 'application/json',
  cost: ({ input }) => 2 + (input.columns * input.rows) / (input.pattern === 'scattered' ? 2 : 20),
  write: (understood) => JSON.stringify(planLayout(understood)),
});
