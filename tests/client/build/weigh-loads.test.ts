import { describe, expect, test } from 'vitest';
import type { Script } from '../../../client/build/bundle-scripts.ts';
import { findExcess, weighLoads } from '../../../client/build/weigh-loads.ts';

const script = (name: string, gzip: number, rest: Partial<Script> = {}): Script => ({
  ...{ name, gzip, contents: new Uint8Array(), entry: undefined, imports: [], inputs: [] },
  ...rest,
});
const loaders = { stable: script('v1.js', 700), pinned: script('embed.js', 1900) };
const bundle = {
  scripts: [
    script('base.js', 6000),
    script('plan.js', 9000, { entry: 'client/embed/register-plan.ts', imports: ['base.js'] }),
    script('csv.js', 70, { entry: 'client/data/csv-tool.ts', imports: ['part.js', 'base.js'] }),
    script('part.js', 7),
  ],
  elements: [{ name: 'plan', first: ['plan.js', 'base.js'], soon: [] }],
};

describe('weighLoads', () => {
  const loads = weighLoads(loaders, bundle);

  test('weighLoads(loaders, bundle) counts with an element the loader and all it loads at once', () => {
    expect(loads.map(({ gzip }) => gzip)).toEqual([700, 1900, 15_700, 77]);
  });

  test('weighLoads(loaders, bundle) counts what comes later without what is there by then', () => {
    expect(loads.at(-1)?.name).toBe('client/data/csv-tool.ts, when it is needed');
  });

  test('weighLoads(loaders, bundle) gives an element that has no budget none', () => {
    const elements = [{ name: 'unheard', first: ['plan.js'], soon: [] }];
    expect(weighLoads(loaders, { ...bundle, elements })[2]?.limit).toBe(0);
  });
});

describe('findExcess', () => {
  test('findExcess gives nothing at the budget exactly', () => {
    expect(findExcess([{ name: 'a', gzip: 1000, limit: 1000 }])).toEqual([]);
  });

  test('findExcess says by how much a load is over', () => {
    expect(findExcess([{ name: 'a', gzip: 1010, limit: 1000 }])).toEqual([
      'a: 1010 bytes after gzip, 10 more than its budget of 1000.',
    ]);
  });
});
