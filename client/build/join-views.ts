import { fileURLToPath } from 'node:url';
import type { Plugin, PluginBuild } from 'esbuild';

const root = fileURLToPath(new URL('../..', import.meta.url));
/** What stands before the path of a view in the bundler’s account. */
const NAMESPACE = 'view';

function setup(bundler: PluginBuild): void {
  bundler.onResolve({ filter: /^\./ }, ({ kind, path, resolveDir }) => {
    const source = new URL(path, `file://${resolveDir}/`).pathname.slice(root.length);
    const isView = kind === 'dynamic-import' && source.startsWith('client/elements/');
    return isView ? { path: source, namespace: NAMESPACE } : undefined;
  });
  bundler.onLoad({ filter: /./, namespace: NAMESPACE }, ({ path }) => {
    const element = path.replace(/([^/]+)\/[^/]+$/, '$1/$1-element.ts');
    const contents = [element, path].map((file) => `export * from './${file}';`).join('\n');
    return { contents, resolveDir: root };
  });
}

/**
 * Lets an element load all that it needs at first as one script. What it shares with views that are fetched later the
 * bundler would cut out, a piece for each set of views that share it, and many small scripts are heavier than one. A
 * view that gives out the class of the element too shares all of it.
 */
export const joinViews: Plugin = { name: 'join-views', setup };

/** The path of a source in the bundler’s account of a bundle, whether it is a view or not. */
export function sourceOf(listed: string): string {
  return listed.replace(`${NAMESPACE}:`, '');
}
