import { beforeAll, describe, expect, test } from 'vitest';
import {
  bundleElements,
  type ElementBundle,
  listLoaded,
} from '../../../client/build/bundle-elements.ts';

describe('bundleElements', () => {
  let bundle: ElementBundle;
  beforeAll(async () => {
    bundle = await bundleElements(['stash', 'kits']);
  }, 60_000);
  const find = (entry: string) => bundle.scripts.filter((script) => script.entry === entry);

  test('bundleElements(names) has an element load itself first, and the base', () => {
    const [stash] = bundle.elements;
    expect(stash?.first[0]).toMatch(/^stash-[A-Z0-9]{8}\.js$/);
    expect(stash?.first.some((name) => name.startsWith('base-'))).toBe(true);
  });

  test('bundleElements(names) makes what several of them fetch later once, and leaves it out of them', () => {
    const [tool, ...others] = find('client/data/csv-tool.ts');
    expect(others).toEqual([]);
    expect(tool?.name).toMatch(/^csv-tool-/);
    for (const name of ['stash', 'kits']) {
      const [script] = find(`client/embed/register-${name}.ts`);
      expect(script?.inputs).not.toContain('client/data/csv-tool.ts');
      expect(new TextDecoder().decode(script?.contents)).toContain(`("./${tool?.name}")`);
    }
  });

  test('bundleElements(names) gives each language a script of its own, named after its group', () => {
    expect(find('client/text/stash/de.ts')[0]?.name).toMatch(/^text-stash-de-/);
  });

  test('bundleElements(names) tells apart what an element loads at first and what soon after', async () => {
    const { scripts, elements } = await bundleElements(['plan']);
    const [plan] = elements;
    const entries = plan?.soon.map((name) => scripts.find((script) => script.name === name)?.entry);
    expect(entries).toContain('client/elements/plan/plan-view-below.ts');
    expect(plan?.first.filter((name) => plan.soon.includes(name))).toEqual([]);
    expect(bundle.elements.flatMap(({ soon }) => soon)).toEqual([]);
  });

  test('bundleElements(names) fails for a name that nothing registers', async () => {
    await expect(bundleElements(['none'])).rejects.toThrow('register-none.ts');
  });
});

describe('listLoaded', () => {
  const script = (name: string, imports: readonly string[]) => ({
    ...{ name, imports, contents: new Uint8Array(), gzip: 0, entry: undefined, inputs: [] },
  });

  test('listLoaded(start, scripts) follows what loads what, round and round too', () => {
    const scripts = [script('a', ['b']), script('b', ['c', 'a']), script('c', []), script('d', [])];
    expect(listLoaded(script('a', ['b']), scripts)).toEqual(['a', 'b', 'c']);
  });
});
