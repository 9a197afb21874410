import { describe, expect, test } from 'vitest';
import { workView } from '../../../../client/elements/plan/plan-view-work.ts';
import { watchContext } from '../../../support/plan-context.ts';
import { planThrow } from '../../../support/plan-throw.ts';
import { find, readText, renderFresh } from '../../../support/render.ts';

const plan = planThrow();

describe('workView', () => {
  test('workView lists the steps in order with a box for each', () => {
    const root = renderFresh(workView(watchContext(), plan));
    expect(root.querySelectorAll('ol input[type=checkbox]')).toHaveLength(plan.steps.length);
    expect(readText(root, 'ol li:first-child')).not.toMatch(/\d\/\d/);
  });

  test('workView ticks and counts', () => {
    const [first, second] = plan.steps;
    const context = watchContext({ done: [first?.id ?? '', 'not in this plan'] });
    const root = renderFresh(workView(context, plan));
    expect(readText(root, 'header .soft')).toContain(`1 of ${plan.steps.length} done`);
    find(root, 'ol > li:nth-child(2) input').click();
    expect(context.act.tick).toHaveBeenCalledExactlyOnceWith(second?.id);
  });

  test('workView tells how much time is left, and nothing of it when all is done', () => {
    const left = (done: readonly string[]) =>
      readText(renderFresh(workView(watchContext({ done }), plan)), 'header .soft');
    expect(left([])).toMatch(/, about [\d½]+ h left$/);
    const rest = plan.steps.filter(({ id }) => id !== 'trim').map(({ id }) => id);
    expect(left(rest)).toMatch(/, about 10 min left$/);
    expect(left(plan.steps.map(({ id }) => id))).toMatch(/done$/);
  });

  test('workView ties each detail to its box', () => {
    const root = renderFresh(workView(watchContext(), plan));
    for (const box of root.querySelectorAll('input')) {
      expect(root.querySelector(`#${box.getAttribute('aria-describedby')}`)).not.toBeNull();
    }
  });

  test('workView shows the steps alone, and hands them out, when asked', async () => {
    const context = watchContext();
    const root = renderFresh(workView(context, plan));
    for (const button of root.querySelectorAll('button')) button.click();
    await expect.poll(() => context.act.lay.mock.calls.length).toBe(2);
    const shown = context.act.lay.mock.calls.map(
      ([aside]) => find(renderFresh(aside?.(context, plan)), 'dialog').className,
    );
    expect(shown.toSorted()).toEqual(['focus', 'form']);
  });
});
