import { describe, expect, test } from 'vitest';
import {
  cautionsView,
  dangersView,
  groundsView,
} from '../../../../client/elements/plan/plan-view-notes.ts';
import { watchContext } from '../../../support/plan-context.ts';
import { planThrow } from '../../../support/plan-throw.ts';
import { find, readText, renderFresh } from '../../../support/render.ts';

const cot = planThrow({ target: { size: 'cot' } });

describe('dangersView', () => {
  test('dangersView says danger in words as well as in colour, with its source', () => {
    const root = renderFresh(dangersView(watchContext(), cot));
    expect(find(root, 'li').className).toBe('danger');
    expect(readText(root, 'li strong')).toBe('Danger.');
    expect(readText(root, 'li small')).toMatch(/Pediatrics/);
  });

  test('dangersView is empty where there is none', () => {
    expect(renderFresh(dangersView(watchContext(), planThrow())).querySelector('li')).toBeNull();
  });
});

describe('cautionsView', () => {
  test('cautionsView folds away what is merely good to know', () => {
    const root = renderFresh(cautionsView(watchContext(), cot));
    const notes = cot.cautions.filter(({ severity }) => severity === 'note');
    expect(root.querySelectorAll('details li')).toHaveLength(notes.length);
  });

  test('cautionsView and dangersView together leave nothing out', () => {
    const count = (view: typeof cautionsView) =>
      renderFresh(view(watchContext(), cot)).querySelectorAll('li').length;
    expect(count(cautionsView) + count(dangersView)).toBe(cot.cautions.length);
  });
});

describe('groundsView', () => {
  test('groundsView tells every assumption', () => {
    const plan = planThrow();
    const root = renderFresh(groundsView(watchContext(), plan));
    expect(root.querySelectorAll('details:first-child li')).toHaveLength(plan.assumptions.length);
  });

  test('groundsView gives each figure its unit, and says no bare true or false', () => {
    const plan = planThrow();
    const root = renderFresh(groundsView(watchContext(), plan));
    const said = [...root.querySelectorAll('details:first-child li')].map((line) =>
      (line.textContent ?? '').replaceAll(/\s+/g, ' '),
    );
    const of = (path: string) => said[plan.assumptions.findIndex((one) => one.path === path)];
    expect(of('block.snipDepth')).toContain(': ½ in');
    expect(of('layers.0.shrink.length')).toContain(': 3.5 %');
    expect(of('layers.0.width')).toContain(': 42 in');
    expect(of('tolerance.seam')).toContain(': 0.0625 in');
    expect(of('layers.0.prints')).toMatch(/: 4(?! in)/);
    expect(of('stitch.chained')).not.toContain(':');
    for (const line of said) expect(line).not.toMatch(/\btrue\b|\bfalse\b/);
  });

  test('groundsView folds the reckoning by section', () => {
    const plan = planThrow({ explain: true });
    const root = renderFresh(groundsView(watchContext({ draft: { explain: 'true' } }), plan));
    const titles = [...root.querySelectorAll('details details > summary')].map(
      ({ textContent }) => textContent,
    );
    expect(titles).toEqual(expect.arrayContaining(['Size', 'Fabrics', 'Thread', 'Time']));
    expect(root.querySelectorAll('details details[open]')).toHaveLength(0);
  });

  test('groundsView asks for the reckoning when it is opened, once', async () => {
    const context = watchContext();
    const details = find<HTMLDetailsElement>(
      renderFresh(groundsView(context, planThrow())),
      'details:last-child',
    );
    details.open = true;
    await expect.poll(() => context.act.set.mock.calls).toEqual([['explain', 'true']]);
  });

  test('groundsView shows each figure with its formula and the numbers in it', () => {
    const plan = planThrow({ explain: true });
    const context = watchContext({ draft: { explain: 'true' } });
    const root = renderFresh(groundsView(context, plan));
    expect(root.querySelectorAll('details details li')).toHaveLength(plan.why?.length ?? 0);
    const [first] = plan.why ?? [];
    expect(readText(root, 'details:last-child li')).toContain(first?.formula);
    expect(context.act.set).not.toHaveBeenCalled();
  });
});
