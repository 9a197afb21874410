import { writeFile } from 'node:fs/promises';
import { batch, ENDPOINTS } from '../app.ts';
import { EXAMPLE } from './describe-batch.ts';
import { describeInput } from './describe-operations.ts';
import { ENDPOINT_WORDS, type EndpointExample } from './endpoint-words.ts';
import { flattenParameters, type Parameter } from './flatten-parameters.ts';
import { SAMPLE_ORIGIN, writeSamples } from './write-samples.ts';

/** Where the page stands; it is served as `/api`. */
export const REFERENCE_FILE = new URL('../../client/pages/api.html', import.meta.url);

interface Section {
  readonly path: string;
  readonly summary: string;
  readonly parameters: readonly Parameter[];
  readonly example: EndpointExample;
  readonly isForm: boolean;
}

/** The text of the reference page, as the sources are now: plain HTML, without a script. */
export function writeReference(): string {
  const sections = [...ENDPOINTS.map(makeSection), makeBatchSection()];
  const links = sections.map(({ path }) => `<li><a href="#${nameOf(path)}">${path}</a></li>`);
  return `<!doctype html>
<html lang="en">
  <head>
    <meta charset="utf-8">
    <meta name="viewport" content="width=device-width, initial-scale=1">
    <title>The API – Ragbloom</title>
    <meta name="color-scheme" content="light dark">
    <link rel="stylesheet" href="/look/page.css">
    <link rel="stylesheet" href="/api.css">
  </head>
  <body>
    <header>
      <p class="mark"><a href="/">Ragbloom</a></p>
      <h1>The API</h1>
    </header>
    <main class="reference">
      <p>Each address takes <code>GET</code> with a flat query of dotted names, or <code>POST</code> with the same input as JSON; equal input gives equal bytes. No key is needed. All of it as OpenAPI: <a href="/openapi.json">openapi.json</a>. What can be wrong with a request: <a href="/problems">problems</a>.</p>
      <p>The samples ask a service on your own machine, <code>${SAMPLE_ORIGIN}</code>. To ask this one, put in its place what stands before <code>/api</code> in the address of this page.</p>
      <nav aria-label="Addresses"><ul>${links.join('')}</ul></nav>
${sections.map(writeSection).join('\n')}
    </main>
  </body>
</html>
`;
}

function makeSection({ path, summary, schema }: (typeof ENDPOINTS)[number]): Section {
  const [example] = Object.values(ENDPOINT_WORDS[path]?.examples ?? {});
  if (example === undefined) throw new Error(`No example is there for ${path}.`);
  const parameters = flattenParameters(describeInput(schema()));
  return { path, summary, parameters, example, isForm: true };
}

function makeBatchSection(): Section {
  const { path, summary } = batch;
  return { path, summary, parameters: [], example: EXAMPLE, isForm: false };
}

function writeSection(section: Section): string {
  const { path, summary, parameters, example, isForm } = section;
  const { curl, typescript, python } = writeSamples(path, example.input);
  const samples = { curl, TypeScript: typescript, Python: python };
  return `      <section aria-labelledby="${nameOf(path)}">
        <h2 id="${nameOf(path)}"><code>${path}</code></h2>
        <p>${escapeText(summary)}</p>
        ${isForm ? writeForm(section) : ''}
        ${Object.entries(samples)
          .map(
            ([language, text]) =>
              `<details><summary>${language}: ${escapeText(example.summary)}</summary><pre tabindex="0"><code>${escapeText(text)}</code></pre></details>`,
          )
          .join('\n        ')}
        ${parameters.length > 0 ? writeTable(path, parameters) : ''}
      </section>`;
}

/** A form that asks by GET: the browser shows what comes back, and its address is the request. */
function writeForm({ path, example }: Section): string {
  const fields = listLeaves(example.input, '').map(
    ([name, value]) =>
      `<label><code>${name}</code> <input name="${name}" value="${escapeText(value)}" required></label>`,
  );
  return `<form action="${path}" method="get"><fieldset><legend>Try it: ${escapeText(example.summary)}</legend>${fields.join('')}<button>Ask</button></fieldset></form>`;
}

function writeTable(path: string, parameters: readonly Parameter[]): string {
  const rows = parameters.map(
    ({ name, description, required }) =>
      `<tr><th scope="row"><code>${name}</code></th><td>${escapeText(description)}${required ? ' (required)' : ''}</td></tr>`,
  );
  return `<details><summary>${parameters.length} names that a query may have; lists count on from 0</summary><table><caption>Input of ${path}</caption><tbody>${rows.join('')}</tbody></table></details>`;
}

function listLeaves(value: unknown, name: string): readonly (readonly [string, string])[] {
  if (typeof value !== 'object' || value === null) return [[name, String(value)]];
  return Object.entries(value).flatMap(([key, part]) =>
    listLeaves(part, name === '' ? key : `${name}.${key}`),
  );
}

function nameOf(path: string): string {
  return path.slice(1).replace(/[^a-z0-9]+/g, '-');
}

function escapeText(text: string): string {
  return text
    .replaceAll('&', '&amp;')
    .replaceAll('<', '&lt;')
    .replaceAll('>', '&gt;')
    .replaceAll('"', '&quot;');
}

if (import.meta.main) await writeFile(REFERENCE_FILE, writeReference());
