import { describe, expect, test } from 'vitest';
import type { KitsRequest, StashRequest } from '#core/contract.ts';
import { planKits } from '#core/kits.ts';
import { planStash } from '#core/stash.ts';
import { resolveKits } from '#core/wish/resolve-kits.ts';
import { resolveStash } from '#core/wish/resolve-stash.ts';
import { useWorker } from '../support/worker.ts';

const worker = useWorker();
const send = (path: string, input: unknown) =>
  worker.fetch(path, {
    method: 'POST',
    headers: { 'Content-Type': 'application/json' },
    body: JSON.stringify(input),
  });

const stash: StashRequest = {
  pieces: ['a', 'b', 'c', 'd', 'e'].map((id) => ({
    id,
    role: 'top',
    width: 21,
    length: 18,
    count: 3,
  })),
  touch: 'corners',
};
const kits: KitsRequest = {
  unit: 'cm',
  plan: { target: { columns: 6, rows: 8 }, block: { cut: 22 } },
  bolts: [
    { id: 'rust', role: 'top', width: 112, length: 1000, cost: 1225 },
    { id: 'moss', role: 'top', width: 109, length: 640, cost: 1137 },
    { id: 'oat', role: 'top', width: 109, length: 90, cost: 1137 },
    { id: 'flannel', role: 'backing', width: 110, length: 2500, cost: 990 },
  ],
  perKit: { distinctPrints: 3, mostOfOne: 30 },
  kits: 20,
  costs: { labour: 700, packaging: 120, margin: 45 },
};

describe('the worker runtime', () => {
  test('answers a stash with the bytes that the core makes here', async () => {
    const read = resolveStash(stash);
    if (!read.ok) throw new Error('refused');
    const answer = await send('/v1/stash', stash);
    expect(answer.status).toBe(200);
    expect(await answer.text()).toBe(JSON.stringify(planStash(read.value)));
  });

  test('answers kits with the bytes that the core makes here, at their own address too', async () => {
    const read = resolveKits(kits);
    if (!read.ok) throw new Error('refused');
    const body = JSON.stringify(planKits(read.value));
    expect(await (await send('/v1/kits', kits)).text()).toBe(body);
    const answer = await worker.fetch(`/v1/kits?${read.value.query}`);
    expect(await answer.text()).toBe(body);
  });

  test('refuses with the same problems', async () => {
    const answer = await send('/v1/kits', { ...kits, costs: { margin: 45, price: 1 } });
    expect(answer.status).toBe(422);
    expect(await answer.json()).toMatchObject({ errors: [{ code: 'price-unclear' }] });
  });
});
