import { ELEMENTS, LAZY, LOADER } from './budgets.ts';
import { type ElementBundle, listLoaded } from './bundle-elements.ts';
import type { Loaders } from './bundle-loaders.ts';

/** Something that is loaded in one go, and what it may weigh in bytes after gzip. */
export interface Load {
  readonly name: string;
  readonly gzip: number;
  readonly limit: number;
}

/** Weighs what pages load: the script that brings elements, what each loads at first, and what is fetched later. */
export function weighLoads(
  { stable, pinned }: Loaders,
  { scripts, elements }: ElementBundle,
): readonly Load[] {
  const weigh = (names: readonly string[]) =>
    scripts.filter(({ name }) => names.includes(name)).reduce((sum, { gzip }) => sum + gzip, 0);
  const firsts = elements.map(({ name, first }) => ({
    name: `ragbloom-${name} with all it needs at first`,
    gzip: stable.gzip + weigh(first),
    limit: ELEMENTS[name] ?? 0,
  }));
  const early = new Set(elements.flatMap(({ first }) => first));
  const lazy = scripts
    .filter(({ name, entry }) => entry !== undefined && !early.has(name))
    .map((script) => ({
      name: `${script.entry}, when it is needed`,
      gzip: weigh(listLoaded(script, scripts).filter((name) => !early.has(name))),
      limit: findLimit(script.entry ?? ''),
    }));
  return [
    { name: 'the loader', gzip: stable.gzip, limit: LOADER },
    { name: 'the loader of one version for ever', gzip: pinned.gzip, limit: LOADER },
    ...firsts,
    ...lazy,
  ];
}

/** Says of each load that is over its budget by how much; an empty list when none is. */
export function findExcess(loads: readonly Load[]): readonly string[] {
  return loads
    .filter(({ gzip, limit }) => gzip > limit)
    .map(
      ({ name, gzip, limit }) =>
        `${name}: ${gzip} bytes after gzip, ${gzip - limit} more than its budget of ${limit}.`,
    );
}

function findLimit(source: string): number {
  return Object.entries(LAZY).find(([start]) => source.startsWith(start))?.[1] ?? 0;
}
