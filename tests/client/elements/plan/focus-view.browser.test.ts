import { render } from 'lit';
import { describe, expect, test } from 'vitest';
import { startFocus } from '../../../../client/elements/plan/focus-view.ts';
import type { Aside } from '../../../../client/elements/plan/open-aside.ts';
import type { PlanState } from '../../../../client/elements/plan/plan-state.ts';
import { type WatchedContext, watchContext } from '../../../support/plan-context.ts';
import { planThrow } from '../../../support/plan-throw.ts';
import { find, readText } from '../../../support/render.ts';

const plan = planThrow();
const ids = plan.steps.map(({ id }) => id);

/** The view in an element of its own, drawn anew whenever something is laid. */
async function openFocus(change: Partial<PlanState> = {}) {
  const context: WatchedContext = watchContext(change);
  const host = document.createElement('div');
  document.body.replaceChildren(host);
  const root = host.attachShadow({ mode: 'open' });
  const place = root.appendChild(document.createElement('div'));
  const show = (aside?: Aside) => render(aside?.(context, plan), place);
  context.act.lay.mockImplementation(show);
  show(await startFocus(context));
  await new Promise((done) => setTimeout(done));
  const press = (name: string) => {
    const button = [...root.querySelectorAll('button')].find(
      ({ textContent }) => textContent?.trim() === name,
    );
    if (button === undefined) throw new Error(`There is no ${name}.`);
    button.click();
  };
  const key = (name: string) =>
    find(root, '.go').dispatchEvent(new KeyboardEvent('keydown', { key: name, bubbles: true }));
  return { root, context, press, key, step: () => readText(root, 'header b') };
}

describe('startFocus', () => {
  test('startFocus opens a dialog over the page at the first step that is not done', async () => {
    const { root, step } = await openFocus({ done: ids.slice(0, 2) });
    expect(find<HTMLDialogElement>(root, 'dialog').matches(':modal')).toBe(true);
    expect(step()).toBe(`Step 3 of ${ids.length}`);
    expect(readText(root, 'h2')).toBe(plan.steps[2]?.do);
  });

  test('startFocus ticks the step and goes on with one press, and goes back without unticking', async () => {
    const { context, press, step } = await openFocus();
    press('Done, next');
    expect(context.act.tick).toHaveBeenCalledExactlyOnceWith(ids[0]);
    expect(step()).toContain('Step 2 of');
    press('Back');
    expect(step()).toContain('Step 1 of');
    expect(context.act.tick).toHaveBeenCalledOnce();
  });

  test('startFocus leaves a step ticked that was', async () => {
    const { context, press, key } = await openFocus({ done: [ids[1] ?? ''] });
    key('ArrowRight');
    press('Done, next');
    expect(context.act.tick).not.toHaveBeenCalled();
  });

  test('startFocus turns pages by the keyboard and ticks nothing', async () => {
    const { context, key, step } = await openFocus();
    for (const name of ['ArrowRight', 'PageDown', 'ArrowLeft', 'x']) key(name);
    expect(step()).toContain('Step 2 of');
    for (let turn = 0; turn < 30; turn += 1) key('PageDown');
    expect(step()).toBe(`Step ${ids.length} of ${ids.length}`);
    for (let turn = 0; turn < 30; turn += 1) key('PageUp');
    expect(step()).toContain('Step 1 of');
    expect(context.act.tick).not.toHaveBeenCalled();
  });

  test('startFocus puts the focus on the way on, which is at least 64 pixels high', async () => {
    const { root } = await openFocus();
    expect(root.activeElement).toBe(find(root, '.go'));
    expect(find(root, '.go').getBoundingClientRect().height).toBeGreaterThanOrEqual(64);
  });

  test('startFocus draws the steps, warns where they are dangerous and lists stacks and rows', async () => {
    const { root, key } = await openFocus();
    const seen: Record<string, readonly [drawn: boolean, warned: boolean, listed: boolean]> = {};
    for (const id of ids) {
      const has = (selector: string) => root.querySelector(selector) !== null;
      seen[id] = [has('.sight svg'), has('.warn'), has('.heaps')];
      key('ArrowRight');
    }
    expect(seen['cut']).toEqual([true, true, false]);
    expect(seen['stack']).toEqual([true, false, true]);
    expect(seen['join']).toEqual([true, false, true]);
    expect(seen['wash']).toEqual([false, true, false]);
  });

  test('startFocus is over on Escape, on the way back and after the last step', async () => {
    const closed = async (act: (focus: Awaited<ReturnType<typeof openFocus>>) => void) => {
      const focus = await openFocus();
      act(focus);
      await expect.poll(() => focus.root.querySelector('dialog')).toBeNull();
    };
    await closed(({ press }) => press('Back to the plan'));
    await closed(({ key, press }) => {
      for (const _ of ids) key('ArrowRight');
      press('All done');
    });
    await closed(({ root }) => find<HTMLDialogElement>(root, 'dialog').requestClose());
  });

  test('startFocus shows the words where an older service tells no more', async () => {
    const older = { ...plan, steps: plan.steps.map(({ cautions: _cautions, ...step }) => step) };
    const context = watchContext();
    const aside = await startFocus(context);
    const place = document.body.appendChild(document.createElement('div'));
    render(aside(context, older), place);
    expect(readText(place, 'h2')).toBe(plan.steps[0]?.do);
    expect(place.querySelector('svg')).toBeNull();
  });
});
