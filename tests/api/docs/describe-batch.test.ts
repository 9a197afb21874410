import { expect, test } from 'vitest';
import { SIZE_LIMITS } from '#core/limits.ts';
import { app, batch } from '../../../api/app.ts';
import { describeBatch, describeBatchInput } from '../../../api/docs/describe-batch.ts';

test('describeBatch shows an answer and a problem side by side', async () => {
  const { post } = await describeBatch(batch, (path, init) => app.request(path, init));
  const text = JSON.stringify(post);
  expect(text).toContain('"status":200');
  expect(text).toContain('"status":422');
  expect(text).toContain(`more than ${SIZE_LIMITS.batchCost} is refused`);
});

test('describeBatchInput says which input goes with which address', () => {
  const schema = JSON.stringify(describeBatchInput(batch, ['/v1/plan', '/v1/yardage']));
  expect(schema).toContain(
    '"path":{"const":"/v1/plan"},"input":{"$ref":"#/components/schemas/PlanRequest"}',
  );
  expect(schema).toContain(`"maxItems":${SIZE_LIMITS.batch}`);
});
