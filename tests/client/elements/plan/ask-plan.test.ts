import { describe, expect, test } from 'vitest';
import type { Draft } from '../../../../client/data/draft.ts';
import type { PlanSource } from '../../../../client/data/load-plan.ts';
import * as onDevice from '../../../../client/data/on-device.ts';
import { askPlan } from '../../../../client/elements/plan/ask-plan.ts';

/** A service that nobody can reach, so that the device answers. */
const SOURCE: PlanSource = {
  api: 'http://127.0.0.1:9',
  patience: 1000,
  loadCore: async () => onDevice,
};
const ask = (asked: Parameters<typeof askPlan>[0]) =>
  askPlan(asked, SOURCE, new AbortController().signal);
const WISH: Draft = { 'target.width': '47', 'target.height': '61' };

async function planOf(draft: Draft) {
  const { loaded } = await ask({ draft });
  if (loaded.kind !== 'answer') throw new Error(`No plan but ${JSON.stringify(loaded)}`);
  return loaded.answer;
}

describe('askPlan', () => {
  test('askPlan({ draft, wanted }) leads to every plan that was offered', async () => {
    const { options } = await planOf(WISH);
    for (const wanted of options) {
      const draft = { ...WISH, 'block.cut': `${wanted.cut}` };
      const { loaded } = await ask({ draft, wanted });
      expect(loaded.kind === 'answer' && loaded.answer).toMatchObject({
        grid: { columns: wanted.columns, rows: wanted.rows },
        block: { cut: wanted.cut },
      });
    }
  });

  test('askPlan keeps the wish where the cut says it all', async () => {
    const [best] = (await planOf(WISH)).options;
    const draft = { ...WISH, 'block.cut': `${best?.cut}` };
    expect((await ask({ draft, wanted: best })).draft).toBe(draft);
  });

  test('askPlan({ draft, tries }) plans without what cannot be had, and tells it', async () => {
    const draft: Draft = { ...WISH, 'block.snipDepth': '3', washes: '999' };
    const { loaded, leftOut, draft: rest } = await ask({ draft, tries: 3 });
    expect(loaded.kind).toBe('answer');
    expect(leftOut.map(({ code }) => code)).toContain('too-large');
    expect(rest).not.toHaveProperty('washes');
    expect(rest).toMatchObject(WISH);
  });

  test('askPlan tells a person what is wrong and leaves the draft alone', async () => {
    const draft: Draft = { ...WISH, washes: '999' };
    expect(await ask({ draft })).toMatchObject({ draft, loaded: { kind: 'faults' }, leftOut: [] });
  });

  test.each<Draft>([
    { 'target.size': 'throw', 'block.cut': '2.1', 'block.seam': '1' },
    { 'target.size': 'throw', 'block.cut': '1' },
    { 'target.width': 'wide' },
    { 'layers.0.role': 'top', 'layers.1.role': 'top' },
  ])('askPlan({ draft: %j, tries: 3 }) comes to a plan in the end', async (draft) => {
    const { loaded, leftOut } = await ask({ draft, tries: 3 });
    expect(loaded.kind).toBe('answer');
    expect(leftOut.length).toBeGreaterThan(0);
  });
});
