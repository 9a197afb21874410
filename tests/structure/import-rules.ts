import { dirname, join } from 'node:path/posix';
import { COMPUTED, type Import, parseModule } from './parse-module.ts';

/** What files of one room may import. The first rule whose `room` fits a file decides. */
type Rule = {
  /** Start of the path of a file. */
  readonly room: string;
  /** Starts of paths of the project, or names of packages; a package ends with its own name. */
  readonly may: readonly string[];
  /** Starts of paths of which only types may be taken. */
  readonly mayType?: readonly string[];
};

const CORE = 'api/core/';
const LIT = ['lit', 'lit/directives/'];
const HONO = ['hono', 'hono/'];
/** The small library: the large one would make the worker a third larger. */
const ZOD = 'zod/mini';

/** The directions of the house, the narrower room first. `<own>` stands for the file's own folder. */
export const RULES: readonly Rule[] = [
  { room: CORE, may: [CORE] },
  {
    room: 'api/http/validate.ts',
    may: ['api/http/', CORE, ...HONO, ZOD, '@hono/zod-validator'],
    mayType: ['zod'],
  },
  { room: 'api/http/', may: ['api/http/', CORE, ...HONO, ZOD] },
  { room: 'api/endpoints/', may: ['api/http/', CORE, ...HONO, ZOD] },
  { room: 'api/pages/', may: ['api/pages/', 'api/http/', CORE, ...HONO] },
  // What writes the documents: it runs on a desk, and nothing of the service imports it.
  {
    room: 'api/docs/',
    may: [
      'api/docs/',
      'api/app.ts',
      'api/endpoints/',
      'api/http/',
      CORE,
      'zod',
      'node:',
      'vitest/node',
    ],
  },
  { room: 'api/app.ts', may: ['api/endpoints/', 'api/pages/', 'api/http/', CORE, ...HONO] },
  { room: 'api/worker.ts', may: ['api/app.ts'] },
  {
    room: 'api/start.ts',
    may: ['api/read-port.ts', 'api/serve-hosts.ts', 'node:', 'miniflare', 'smol-toml'],
  },
  { room: 'api/serve-hosts.ts', may: ['node:'] },
  {
    room: 'api/node.ts',
    may: ['api/app.ts', 'api/load-files.ts', 'api/read-port.ts', 'node:', '@hono/node-server'],
  },
  { room: 'api/load-files.ts', may: ['api/read-header-rules.ts', 'api/http/', 'node:'] },
  { room: 'api/read-', may: [] },
  { room: 'client/text/', may: ['client/text/'], mayType: [CORE] },
  { room: 'client/look/', may: ['client/look/', ...LIT] },
  // The one that reads and writes files of spreadsheets is a bundle of its own, fetched when it is used.
  { room: 'client/data/csv-tool.ts', may: ['papaparse'] },
  { room: 'client/data/', may: ['client/data/', CORE, 'valibot'] },
  // What draws a code for a camera is fetched when one is wanted.
  { room: 'client/drawing/draw-code.ts', may: ['lean-qr/nano'] },
  { room: 'client/drawing/', may: ['client/drawing/', CORE, ...LIT] },
  {
    room: 'client/fields/',
    may: ['client/fields/', 'client/drawing/', 'client/text/', CORE, ...LIT],
  },
  // What every element owes to the page around it.
  {
    room: 'client/host/',
    may: ['client/host/', 'client/fields/', 'client/data/', 'client/text/', CORE, ...LIT],
  },
  {
    room: 'client/elements/',
    may: [
      '<own>',
      'client/host/',
      'client/fields/',
      'client/drawing/',
      'client/data/',
      'client/text/',
      'client/look/',
      CORE,
      ...LIT,
    ],
  },
  // The one address made up at run time: that of an element's files, seen from where the loader came from.
  { room: 'client/embed/load-file.ts', may: [COMPUTED] },
  { room: 'client/embed/', may: ['client/embed/', 'client/elements/', 'client/data/'] },
  { room: 'client/frame/', may: ['client/frame/'] },
  { room: 'client/maker/', may: ['client/maker/', 'client/data/', 'client/text/', CORE, ...LIT] },
  { room: 'client/offline/bundle-offline.ts', may: ['node:', 'esbuild'] },
  { room: 'client/offline/', may: ['client/offline/', 'client/data/', 'client/text/'] },
  { room: 'client/api/build-package.ts', may: ['client/build/', 'node:', 'esbuild'] },
  { room: 'client/api/', may: ['client/api/'], mayType: [CORE] },
  { room: 'client/build/', may: ['client/build/', 'node:', 'esbuild', 'terser'] },
  {
    room: 'client/build.ts',
    may: [
      'client/build/',
      'client/embed/version.ts',
      'client/look/',
      'client/offline/bundle-offline.ts',
      'node:',
    ],
  },
];

/** What is wrong with the imports of one file, a sentence each. */
export function judgeImports(file: string, text: string): readonly string[] {
  const rule = RULES.find(({ room }) => file.startsWith(room));
  if (rule === undefined) return [`${file} stands in no room that has a rule.`];
  const { imports } = parseModule(text);
  return [...judgeName(file), ...imports.flatMap((one) => judgeImport(file, rule, one))];
}

function judgeName(file: string): readonly string[] {
  return /(^|\/)index\.ts$/.test(file) ? [`${file} is named as a barrel.`] : [];
}

function judgeImport(file: string, rule: Rule, one: Import): readonly string[] {
  const { specifier, isType, isReexport } = one;
  const isPackage = !/^[.#]/.test(specifier);
  const target = resolve(file, specifier);
  const allowed = isType ? [...rule.may, ...(rule.mayType ?? [])] : rule.may;
  const own = `${dirname(file)}/`;
  const mayImport = allowed.some((start) =>
    start.endsWith('/') || start.endsWith(':') || start === '<own>'
      ? target.startsWith(start === '<own>' ? own : start)
      : target === start,
  );
  return [
    ...(mayImport ? [] : [`${file} may not import ${isType ? 'types of ' : ''}${specifier}.`]),
    ...(isReexport ? [`${file} hands on what ${specifier} exports.`] : []),
    ...(isPackage || specifier.endsWith('.ts')
      ? []
      : [`${file} imports ${specifier} without .ts.`]),
    ...(isPackage ? [] : judgeRoad(file, specifier, target)),
  ];
}

/** Core has one name outside itself, and none inside. */
function judgeRoad(file: string, specifier: string, target: string): readonly string[] {
  if (!target.startsWith(CORE)) return [];
  const isInside = file.startsWith(CORE);
  if (isInside === specifier.startsWith('.')) return [];
  return [
    `${file} reaches core by ${specifier}: ${isInside ? 'a relative path' : '#core/'} is right.`,
  ];
}

/** The path in the project that a specifier means, or the specifier of a package itself. */
export function resolve(file: string, specifier: string): string {
  if (specifier.startsWith('#core/')) return specifier.replace('#core/', CORE);
  return specifier.startsWith('.') ? join(dirname(file), specifier) : specifier;
}

/** A way round that comes back to its start, over imports that are left at run time; none is right. */
export function findCircle(files: ReadonlyMap<string, string>): readonly string[] | undefined {
  const done = new Set<string>();
  const next = (file: string) =>
    parseModule(files.get(file) ?? '')
      .imports.filter(({ isType }) => !isType)
      .map(({ specifier }) => resolve(file, specifier));
  const visit = (file: string, road: readonly string[]): readonly string[] | undefined => {
    if (road.includes(file)) return [...road.slice(road.indexOf(file)), file];
    if (done.has(file)) return undefined;
    const found = next(file).map((target) => visit(target, [...road, file]));
    done.add(file);
    return found.find((circle) => circle !== undefined);
  };
  return [...files.keys()].map((file) => visit(file, [])).find((circle) => circle !== undefined);
}
