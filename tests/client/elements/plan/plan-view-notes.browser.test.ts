import { describe, expect, test } from 'vitest';
import { cautionsView, groundsView } from '../../../../client/elements/plan/plan-view-notes.ts';
import { watchContext } from '../../../support/plan-context.ts';
import { planThrow } from '../../../support/plan-throw.ts';
import { find, readText, renderFresh } from '../../../support/render.ts';

const cot = planThrow({ target: { size: 'cot' } });

describe('cautionsView', () => {
  test('cautionsView folds away what is merely good to know', () => {
    const root = renderFresh(cautionsView(watchContext(), cot));
    const notes = cot.cautions.filter(({ severity }) => severity === 'note');
    expect(root.querySelectorAll('details li')).toHaveLength(notes.length);
  });

  test('cautionsView leaves nothing out but the dangers, which stand higher up', () => {
    const root = renderFresh(cautionsView(watchContext(), cot));
    const rest = cot.cautions.filter(({ severity }) => severity !== 'danger');
    expect(rest.length).toBeLessThan(cot.cautions.length);
    expect(root.querySelectorAll('li')).toHaveLength(rest.length);
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
