import { parseModule } from './parse-module.ts';

/** Rooms under tests/ that mirror the sources; others there test across rooms. */
export const MIRRORED = ['tests/core/', 'tests/api/', 'tests/client/'] as const;

/** Sources without a test of their own, each with the reason. A reason `types only` is checked. */
export const EXEMPT: Readonly<Record<string, string>> = {
  'api/core/cloth/offers/offer.ts': 'types only',
  'api/core/contract.ts': 'types only',
  'api/core/counter/counter-need.ts': 'types only',
  'api/core/drawing/drawn-cuts.ts': 'types only',
  'api/core/plan/explained.ts': 'types only',
  'api/core/drawing/steps/step-scene.ts': 'types and constants only',
  'api/core/sewing/work-facts.ts': 'types only',
  'api/docs/schema-shapes.ts': 'types only',
  'api/http/endpoint.ts': 'types only',
  'api/pages/telling.ts': 'types only',
  'client/build/budgets.ts': 'figures, held by tests/client/build.test.ts against what is built',
  'client/embed/loader.ts': 'it is whole only once it is built: tests/embedding loads it in pages',
  'client/elements/compare/compare-context.ts': 'types only',
  'client/elements/size/size-context.ts': 'types only',
  'client/elements/yardage/yardage-context.ts': 'types only',
  'client/host/errand.ts': 'types only',
  'client/host/light-context.ts': 'types only',
};

/** A group of words in one language: the languages of a group are tested together, where their source is. */
const LANGUAGE_FILE = /^(client\/text\/[a-z-]+\/)(en|es|de|fr)$/;
/** What registers one element: all are tested together, by how they are built. */
const REGISTER_FILE = /^client\/embed\/register-[a-z]+$/;

/** Where the test of a source belongs, without its ending. */
export function findTestPath(source: string): string {
  const path = source
    .replace(/\.ts$/, '')
    .replace(LANGUAGE_FILE, '$1source')
    .replace(REGISTER_FILE, 'client/embed/register-element');
  return path.startsWith('api/core/') ? path.replace('api/core/', 'tests/core/') : `tests/${path}`;
}

/** What is missing on either side of the mirror, a sentence each. */
export function judgeMirror(
  sources: readonly string[],
  tests: readonly string[],
  exempt: Readonly<Record<string, string>>,
): readonly string[] {
  const tested = new Set(tests.map((test) => test.replace(/(\.browser)?\.test\.ts$/, '')));
  const wanted = new Set(sources.map(findTestPath));
  const bare = sources.filter(
    (source) => exempt[source] === undefined && !tested.has(findTestPath(source)),
  );
  const stray = tests.filter(
    (test) =>
      MIRRORED.some((room) => test.startsWith(room)) &&
      !wanted.has(test.replace(/(\.browser)?\.test\.ts$/, '')),
  );
  const idle = Object.keys(exempt).filter(
    (source) => !sources.includes(source) || tested.has(findTestPath(source)),
  );
  return [
    ...bare.map((source) => `${source} has no ${findTestPath(source)}.test.ts.`),
    ...stray.map((test) => `${test} tests no source at its mirrored path.`),
    ...idle.map((source) => `${source} needs no exemption.`),
  ];
}

/** Whether nothing of a file is left at run time. */
export function isTypesOnly(text: string): boolean {
  const { imports, values } = parseModule(text);
  return values.length === 0 && imports.every(({ isType }) => isType);
}
