import { describe, expect, test } from 'vitest';
import type { PlanState } from '../../../../client/elements/plan/plan-state.ts';
import { planView } from '../../../../client/elements/plan/plan-view.ts';
import { watchContext } from '../../../support/plan-context.ts';
import { find, readText, renderFresh } from '../../../support/render.ts';

const show = (change?: Partial<PlanState>, hasFoot = false) =>
  renderFresh(planView(watchContext(change), hasFoot));
const notices = (root: ParentNode) =>
  [...root.querySelectorAll('[role=alert] .notice')].map((notice) => notice.textContent);

describe('planView', () => {
  test('planView keeps room for the quilt while nothing is known of it', () => {
    const { answer: _answer, ...state } = watchContext().state;
    const root = renderFresh(planView({ ...watchContext(), state }, true));
    expect(root.querySelector('.waiting')).not.toBeNull();
    expect(root.querySelector('.foot')).toBeNull();
  });

  test('planView has no notices when all is well, but a region for them', () => {
    expect(notices(show())).toEqual([]);
    expect(find(show(), '[role=alert]')).toBeInstanceOf(HTMLElement);
  });

  test('planView says so when the device worked the plan out', () => {
    expect(notices(show({ from: 'device' }))).toEqual([expect.stringContaining('your device')]);
  });

  test('planView tells faults that no field shows, and that the plan is the one from before', () => {
    const faults = [{ code: 'quilt-too-large', path: ['target'] }] as const;
    expect(notices(show({ faults }))).toEqual([
      expect.stringContaining('too much quilt'),
      expect.stringContaining('from before'),
    ]);
  });

  test('planView tells what a host asked for and could not be read, with its place', () => {
    const hostFaults = [{ code: 'unknown-key', path: ['colour'], received: 'red' }] as const;
    expect(notices(show({ hostFaults }))).toEqual([expect.stringContaining('colour')]);
  });

  test.each(['silent', 'busy', 'broken', 'strange'] as const)(
    'planView says that the planner is %s, and that the plan is the one from before',
    (trouble) => {
      const { light, stale } = watchContext().text;
      const said = notices(show({ trouble })).join(' ');
      expect(said).toContain(light.trouble[trouble]);
      expect(said).toContain(stale);
    },
  );

  test('planView leaves out other plans where the page has set the block', () => {
    const context = watchContext();
    const isLocked = (path: string) => path === 'block.cut';
    const root = renderFresh(planView({ ...context, isLocked }, false));
    expect(root.querySelector('[part=options]')).toBeNull();
    expect(show().querySelector('[part=options]')).not.toBeNull();
  });

  test('planView offers to try again where nobody answers', () => {
    const context = watchContext({ trouble: 'silent' });
    find(renderFresh(planView(context, false)), '.notice button').click();
    expect(context.act.retry).toHaveBeenCalledOnce();
  });

  test('planView says the plan in one sentence when it is ready, and nothing while it is not', () => {
    expect(readText(show(), '[role=status]')).toMatch(/^Planned: \d+ by \d+ blocks, .*\.$/);
    expect(readText(show({ isBusy: true }), '[role=status]')).toBe('');
  });

  test('planView has a foot only where it is asked for', () => {
    expect(show({}, true).querySelector('.foot')).not.toBeNull();
    expect(show({}, false).querySelector('.foot')).toBeNull();
  });

  test('planView gives every id once', () => {
    const ids = [...show().querySelectorAll('[id]')].map(({ id }) => id);
    expect(new Set(ids).size).toBe(ids.length);
  });

  test('planView styles nothing inline, which a strict policy refuses', () => {
    expect(show({}, true).querySelectorAll('[style], style')).toHaveLength(0);
  });
});
