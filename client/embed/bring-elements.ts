/** What the script that brings elements knows. */
export interface Bringing {
  /** The files of each element by its tag. */
  readonly files: Readonly<Record<string, readonly string[]>>;
  readonly version: string;
  /** Loads files and runs them; the element is registered when that is done. */
  readonly load: (files: readonly string[]) => Promise<unknown>;
}

/** Under this name all versions on a page agree which of them brings an element. */
const CLAIMS = Symbol.for('ragbloom');

/**
 * Brings an element once its tag is in the document: at once, or when it comes, however it comes. Each is loaded once;
 * of two versions the one that saw the tag first brings it, and the other says so in the console. What could not be
 * loaded is tried again when the tag comes again.
 */
export function bringElements({ files, version, load }: Bringing): void {
  const page = globalThis as unknown as { [CLAIMS]?: Map<string, string> };
  page[CLAIMS] ??= new Map();
  const claims = page[CLAIMS];
  const waiting = new Set(Object.keys(files));
  const selector = [...waiting].join();
  const bring = (tag: string) => {
    waiting.delete(tag);
    const known = customElements.get(tag) as { readonly version?: string } | undefined;
    const there = known === undefined ? claims.get(tag) : `${known.version}`;
    if (there === undefined) {
      claims.set(tag, version);
      load(files[tag] ?? []).catch(() => {
        claims.delete(tag);
        waiting.add(tag);
      });
    } else if (there !== version) {
      console.warn(`${tag} is here in version ${there}, so ${version} is left out.`);
    }
  };
  const look = (root: Document | Element) => {
    for (const { localName } of [root as Element, ...root.querySelectorAll(selector)]) {
      if (waiting.has(localName)) bring(localName);
    }
  };
  new MutationObserver((records) => {
    for (const { addedNodes } of records) {
      for (const node of addedNodes) if (node instanceof Element) look(node);
    }
  }).observe(document, { childList: true, subtree: true });
  look(document);
}
