import { fileURLToPath } from 'node:url';
import type { BuildOptions, Plugin } from 'esbuild';
import { bundleScripts, type Script } from './bundle-scripts.ts';
import { joinViews } from './join-views.ts';
import { makeLighter } from './make-lighter.ts';
import { shortNames } from './short-names.ts';
import { TIGHTENED, tightenScript } from './tighten-script.ts';

const root = fileURLToPath(new URL('../..', import.meta.url));

/** What all elements are made with, loaded once however many of them a page holds. */
const BASE = `
export { html, noChange, nothing, render, svg, unsafeCSS } from 'lit';
export { _$LH } from 'lit-html';
export { DrawnElement } from './client/host/drawn-element.ts';`;

/** An element as it is loaded. */
export interface ElementScripts {
  readonly name: string;
  /** Names of the scripts that it needs before it shows: the one that registers it first. */
  readonly first: readonly string[];
  /** Names of those that it fetches right after it shows, for what lies below. */
  readonly soon: readonly string[];
}

/** All scripts of the elements, and which of them each loads at first. */
export interface ElementBundle {
  readonly scripts: readonly Script[];
  readonly elements: readonly ElementScripts[];
}

/**
 * Bundles the elements: what all are made with, each element, and what is fetched only when it is needed. An element
 * is bundled alone, since to share ever more with ever more others costs a page that holds one of them more than it
 * gains. What is fetched later, such as the core or a language, stands for itself as well, but for a view, which
 * shares with its element.
 *
 * @param names what comes after `ragbloom-` in the tags; `client/embed/register-<name>.ts` registers one.
 */
export async function bundleElements(names: readonly string[]): Promise<ElementBundle> {
  const stdin = { contents: BASE, resolveDir: root, sourcefile: 'base' };
  const [base] = await bundleTight({
    stdin,
    entryNames: 'base-[hash]',
    plugins: [makeLighter],
  });
  if (base === undefined) throw new Error('The bundler gave no base.');
  const lazy = new Map<string, Promise<Script>>();
  const built = names.map(async (name) => {
    const entryPoints = { [name]: `client/embed/register-${name}.ts` };
    const plugins = [takeBase(base.name), standApart(base.name, lazy), joinViews, makeLighter];
    return bundleTight({ entryPoints, splitting: true, plugins });
  });
  const alone = await Promise.all(built);
  const scripts = [base, ...alone.flat(), ...(await Promise.all(lazy.values()))];
  const elements = names.map((name, at) => listScripts(name, alone[at] ?? []));
  return { scripts, elements };
}

/** What a script loads at once, and what these load, itself first. */
export function listLoaded(start: Script, scripts: readonly Script[]): readonly string[] {
  const found = new Set<string>();
  const visit = (name: string) => {
    if (found.has(name)) return;
    found.add(name);
    for (const next of scripts.find((script) => script.name === name)?.imports ?? []) visit(next);
  };
  visit(start.name);
  return [...found];
}

function listScripts(name: string, scripts: readonly Script[]): ElementScripts {
  const entry = `client/embed/register-${name}.ts`;
  const start = scripts.find((script) => script.entry === entry);
  if (start === undefined) throw new Error(`The bundler gave nothing for ${entry}.`);
  const first = listLoaded(start, scripts);
  const view = `client/elements/${name}/${name}-view-below.ts`;
  const below = scripts.filter((script) => script.entry === view);
  const soon = below.flatMap((script) => listLoaded(script, scripts));
  return { name, first, soon: soon.filter((file) => !first.includes(file)) };
}

/** Leaves out of a script what every element has. */
function takeBase(base: string): Plugin {
  return {
    name: 'take-base',
    setup(bundler) {
      // Directives, which few elements use, are bundled with these and reach Lit by its second name.
      const isBase = /^lit$|^(\.{1,2}|lit-html)\/lit-html\.js$|\/drawn-element\.ts$/;
      bundler.onResolve({ filter: isBase }, () => ({ path: 'base', namespace: 'base' }));
      // One source that passes the base on makes one import of it, where each source would have its own.
      bundler.onLoad({ filter: /^base$/, namespace: 'base' }, () => ({ contents: passOn(base) }));
      bundler.onResolve({ filter: /^\./, namespace: 'base' }, ({ path }) => ({
        path,
        external: true,
        sideEffects: false,
      }));
    },
  };
}

/** Leaves out of an element what is fetched later and stands for itself. */
function standApart(base: string, lazy: Map<string, Promise<Script>>): Plugin {
  return {
    name: 'stand-apart',
    setup(bundler) {
      bundler.onResolve({ filter: /^\./ }, async ({ kind, path, resolveDir }) => {
        const source = new URL(path, `file://${resolveDir}/`).pathname.slice(root.length);
        if (kind !== 'dynamic-import' || source.startsWith('client/elements/')) return undefined;
        if (!lazy.has(source)) lazy.set(source, bundleLazy(source, base));
        return { path: `./${(await lazy.get(source))?.name}`, external: true };
      });
    },
  };
}

function passOn(base: string): string {
  return BASE.replace(/'[^']+'/g, `'./${base}'`);
}

/** What is loaded at first is worth a second look. */
async function bundleTight(options: BuildOptions): Promise<readonly Script[]> {
  const scripts = await bundleScripts({ ...shortNames, footer: TIGHTENED, ...options });
  return Promise.all(scripts.map(tightenScript));
}

async function bundleLazy(source: string, base: string): Promise<Script> {
  const name = source.replace(/^client\/(data\/)?|\.ts$/g, '').replaceAll('/', '-');
  const [script] = await bundleScripts({
    ...shortNames,
    entryPoints: { [name]: source },
    plugins: [takeBase(base), makeLighter],
  });
  if (script === undefined) throw new Error(`The bundler gave nothing for ${source}.`);
  return script;
}
