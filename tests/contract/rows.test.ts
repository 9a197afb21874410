import { describe, expect, test } from 'vitest';
import type { PlanRequest } from '#core/contract.ts';
import type { Outcome } from '#core/outcome.ts';
import { planQuilt } from '#core/plan.ts';
import { resolvePlan } from '#core/wish/resolve-plan.ts';
import { app } from '../../api/app.ts';
import { planSchema } from '../../api/http/schemas/plan-schema.ts';
import { checkRequest } from '../../client/data/check-request.ts';
import { PLAN_ROWS, readDemoRows } from './rows.ts';

const ask = (input: object) =>
  app.request('/v1/plan', {
    method: 'POST',
    headers: { 'Content-Type': 'application/json' },
    body: JSON.stringify(input),
  });

/** What the core says of a request that a schema let pass. */
function judge(checked: Outcome<PlanRequest>): Outcome<string> {
  if (!checked.ok) return checked;
  const resolved = resolvePlan(checked.value);
  return resolved.ok ? { ok: true, value: JSON.stringify(planQuilt(resolved.value)) } : resolved;
}

function checkByZod(input: object): Outcome<PlanRequest> {
  const parsed = planSchema().safeParse(input);
  return parsed.success ? { ok: true, value: parsed.data } : { ok: false, faults: [] };
}

const roads = { 'the schema of the API': checkByZod, 'the schema of the page': checkRequest };

describe.each([...PLAN_ROWS, ...readDemoRows()])('$name', ({ input, ok }) => {
  test(`is ${ok ? 'answered' : 'refused'} over HTTP`, async () => {
    expect((await ask(input)).status).toBe(ok ? 200 : 422);
  });

  test.each(Object.entries(roads))(
    'comes to the same by way of %s and the core',
    async (_, check) => {
      const outcome = judge(check(input));
      expect(outcome.ok).toBe(ok);
      if (outcome.ok) expect(outcome.value).toBe(await (await ask(input)).text());
    },
  );
});
