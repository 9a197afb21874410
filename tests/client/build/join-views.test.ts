import { expect, test } from 'vitest';
import { bundleScripts } from '../../../client/build/bundle-scripts.ts';
import { joinViews, sourceOf } from '../../../client/build/join-views.ts';

const ENTRY = 'client/embed/register-plan.ts';
const VIEW = 'client/elements/plan/plan-view-below.ts';

const bundle = (isJoined: boolean) =>
  bundleScripts({
    entryPoints: [ENTRY],
    splitting: true,
    plugins: isJoined ? [joinViews] : [],
  });

test('joinViews has an element load at first one script beside the one that registers it', async () => {
  const [joined, cut] = await Promise.all([bundle(true), bundle(false)]);
  const holders = (scripts: typeof joined) => {
    const first = scripts.find(({ entry }) => entry === ENTRY)?.imports ?? [];
    return scripts.filter(
      ({ name, inputs }) =>
        first.includes(name) && inputs.some((path) => path.startsWith('client/elements/plan/')),
    );
  };
  expect(holders(joined)).toHaveLength(1);
  expect(holders(joined)[0]?.inputs).toContain('client/elements/plan/plan-element.ts');
  expect(holders(cut).length).toBeGreaterThan(1);
});

test('joinViews leaves a view a script of its own, known by its source', async () => {
  const scripts = await bundle(true);
  const [view, ...others] = scripts.filter(({ entry }) => entry === VIEW);
  expect(others).toEqual([]);
  expect(view?.inputs).toContain(VIEW);
  expect(view?.inputs).not.toContain('client/elements/plan/plan-element.ts');
});

test('sourceOf(listed) gives the path of a view and of any other source', () => {
  expect(sourceOf(`view:${VIEW}`)).toBe(VIEW);
  expect(sourceOf(ENTRY)).toBe(ENTRY);
});
