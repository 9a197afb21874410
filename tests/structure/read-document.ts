/** A fenced block of a document. */
export type Fence = {
  readonly language: string;
  readonly text: string;
  /** The line of the document that it starts on, from 1. */
  readonly line: number;
};

/** What of a document can be tested. */
export type Document = {
  readonly fences: readonly Fence[];
  /** Code inside sentences. */
  readonly spans: readonly string[];
  /** Where links that stay in the project lead. */
  readonly links: readonly string[];
};

/** Takes a document in Markdown apart. */
export function readDocument(text: string): Document {
  const fences: Fence[] = [];
  const prose: string[] = [];
  let open: { language: string; line: number; lines: string[] } | undefined;
  for (const [index, line] of text.split('\n').entries()) {
    const mark = /^```(.*)$/.exec(line);
    if (mark === null) (open?.lines ?? prose).push(line);
    else if (open === undefined) open = { language: mark[1] ?? '', line: index + 1, lines: [] };
    else {
      fences.push({ language: open.language, line: open.line, text: open.lines.join('\n') });
      open = undefined;
    }
  }
  if (open !== undefined) throw new Error(`The block of line ${open.line} is never closed.`);
  const sentences = prose.join('\n');
  return {
    fences,
    spans: [...sentences.matchAll(/`([^`\n]+)`/g)].map(([, span]) => span ?? ''),
    links: [...sentences.matchAll(/\]\((?!https?:)([^)#]+)/g)].map(([, link]) => link ?? ''),
  };
}

/** Kinds of thing that a piece of code in a sentence names. */
export type Named =
  | { readonly kind: 'script'; readonly name: string }
  | { readonly kind: 'path'; readonly path: string }
  | { readonly kind: 'address'; readonly path: string }
  | { readonly kind: 'word' };

const ROOMS = /^(api|client|tests|demo-data|\.ci)\//;
const TOP_FILE = /^\.?[\w-]+\.(md|json|toml)$|^LICENSE$/;
/** Words with a slash in them that name neither a path nor an address. */
const MEDIA_TYPE = /^(application|text|image)\/[a-z+]+$/;
const PACKAGE = /^@[a-z0-9-]+\/[a-z0-9-]+$/;

/** What a piece of code in a sentence names; a path that is in no room of the project is one all the same. */
export function nameSpan(span: string): Named {
  const script = /^(?:PORT=\d+ )?npm (?:run )?([a-z]+)/.exec(span)?.[1];
  if (script !== undefined) return { kind: 'script', name: script };
  if (span.startsWith('#core/')) return { kind: 'path', path: span.replace('#core/', 'api/core/') };
  if (ROOMS.test(span) || TOP_FILE.test(span)) return { kind: 'path', path: span };
  if (/^\/[a-z]/.test(span)) return { kind: 'address', path: span };
  const isOther = MEDIA_TYPE.test(span) || PACKAGE.test(span) || /[\s<>=]/.test(span);
  const isFraction = /\d\/\d/.test(span);
  return span.includes('/') && !isOther && !isFraction
    ? { kind: 'path', path: span }
    : { kind: 'word' };
}
