import { PROBLEM_KINDS, type ProblemKind } from '../http/problem-kinds.ts';
import { PROBLEM_MEANINGS } from './problem-meanings.ts';

/** The style of the page, and its digest, by which alone the page's policy lets it pass. */
export const PROBLEM_STYLE =
  ':root{color-scheme:light dark;font:1.125rem/1.6 system-ui,sans-serif}' +
  'body{max-width:38rem;margin:2rem auto;padding:0 1rem}h1{line-height:1.25}li{margin:.5rem 0}';
export const PROBLEM_STYLE_HASH = 'sha256-MV4HeSmayBsQaQiWvy1toBYem4g8LjMbxTsnCKyolvE=';

/** Every kind of problem, in the order of their table. */
export const PROBLEM_SLUGS = Object.keys(PROBLEM_KINDS) as readonly ProblemKind[];

/** Pages to go on from where there is nothing. */
const WAYS_ON = [
  ['/', 'Plan a quilt'],
  ['/layout', 'Lay out the prints'],
  ['/wash', 'What the wash does'],
  ['/stash', 'What the cloth in hand makes'],
  ['/kits', 'Kits out of bolts'],
  ['/counter', 'At the cutting counter'],
  ['/compare', 'Compare two plans'],
  ['/embed', 'A calculator for your own page'],
  ['/api', 'For programs'],
] as const;

/**
 * The page at the address that a problem has as its `type`.
 *
 * @param slug last part of the address
 * @returns HTML, or nothing where no problem has this name
 */
export function writeProblemPage(slug: string): string | undefined {
  const kind = PROBLEM_SLUGS.find((known) => known === slug);
  if (kind === undefined) return undefined;
  const [status, title] = PROBLEM_KINDS[kind];
  const rest = '<p><a href="/problems">All kinds of problem</a></p>';
  return writePage(
    title,
    `<p>${PROBLEM_MEANINGS[kind]}</p><p>Answers of this kind have status ${status} and the code <code>${kind}</code>.</p>${rest}`,
  );
}

/** The page that lists every kind of problem. */
export function writeProblemList(): string {
  const items = PROBLEM_SLUGS.map(
    (kind) =>
      `<li><a href="/problems/${kind}"><code>${kind}</code></a> ${PROBLEM_KINDS[kind][1]}</li>`,
  );
  return writePage('What can be wrong with a request', `<ul>${items.join('')}</ul>`);
}

/** The page at an address that has nothing, with the ways on. */
export function writeNotFoundPage(): string {
  const items = WAYS_ON.map(([path, name]) => `<li><a href="${path}">${name}</a></li>`);
  return writePage(
    PROBLEM_KINDS['not-found'][1],
    `<p>${PROBLEM_MEANINGS['not-found']}</p><p>These are there:</p><ul>${items.join('')}</ul>`,
  );
}

function writePage(title: string, body: string): string {
  return (
    '<!doctype html><html lang="en"><head><meta charset="utf-8">' +
    '<meta name="viewport" content="width=device-width,initial-scale=1">' +
    `<title>${title} – Ragbloom</title><style>${PROBLEM_STYLE}</style></head>` +
    `<body><main><h1>${title}</h1>${body}</main></body></html>\n`
  );
}
