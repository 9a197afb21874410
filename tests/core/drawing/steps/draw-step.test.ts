import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { drawStep } from '#core/drawing/steps/draw-step.ts';
import { resolvePlan } from '#core/wish/resolve-plan.ts';
import { planFor } from '../../../support/plans.ts';
import { planRequests } from '../../../support/requests.ts';

describe('drawStep', () => {
  test('drawStep draws what is cut, sewn, snipped and laid, and nothing of a wash', () => {
    const answer = planFor({ target: { size: 'throw' } });
    const drawn = answer.steps.flatMap(({ id }) => (drawStep(id, answer) ? [id] : []));
    expect(drawn).toEqual([
      ...['cut', 'stack', 'quilt-first', 'quilt-second', 'snip'],
      ...['layout', 'join', 'join-rows', 'border'],
    ]);
    expect(drawStep('sing', answer)).toBeUndefined();
  });

  test('drawStep keeps its figures finite and its letters on the board, whatever the plan', () => {
    fc.assert(
      fc.property(planRequests, (request) => {
        fc.pre(resolvePlan(request).ok);
        const answer = planFor(request);
        for (const { id } of answer.steps) {
          for (const shape of drawStep(id, answer)?.shapes ?? []) {
            if (shape.kind === 'path') {
              expect(shape.d).not.toMatch(/NaN|Infinity|undefined/);
              continue;
            }
            const half = (shape.text.length * shape.size * 0.56) / 2;
            expect(shape.x - half, `${id} ${shape.text}`).toBeGreaterThan(-4);
            expect(shape.x + half, `${id} ${shape.text}`).toBeLessThan(304);
            expect(shape.y).toBeGreaterThan(0);
            expect(shape.y).toBeLessThan(200);
          }
        }
      }),
      { numRuns: 30 },
    );
  });
});
