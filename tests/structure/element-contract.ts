import { type Node, parseModule } from './parse-module.ts';

/** What an element promises to the page that holds it. */
export type Contract = {
  readonly attributes: readonly string[];
  readonly events: readonly string[];
  readonly slots: readonly string[];
  readonly parts: readonly string[];
  readonly tokens: readonly string[];
};

/** What every element that stands on the base has, which says so itself: it is told there, and not again. */
const BASE = /extends (?:Asking|Light)Element\b/;
/** A list that says so has nothing in it. */
const NONE = 'none';

/** Where the base says and has it. */
export const BASE_FILES = [
  'client/host/hosted-element.ts',
  'client/host/asking-element.ts',
] as const;

const HEADS = {
  attributes: /^Attributes\b.*$/m,
  events: /^Events\b.*$/m,
  slots: /^Slots\b.*$/m,
  parts: /^Parts:/m,
  tokens: /^Custom properties:/m,
} as const;

/** Reads the contract that the docblock of an element's class states. */
export function readPromise(source: string): Contract {
  const block =
    /\/\*\*((?:(?!\*\/)[\s\S])*)\*\/\nexport (?:abstract )?class /.exec(source)?.[1] ?? '';
  const text = block.replaceAll(/^ \* ?/gm, '');
  const section = (head: RegExp) => {
    const found = head.exec(text);
    if (found === null) return '';
    const rest = text.slice(found.index + found[0].length);
    const ends = Object.values(HEADS).map((other) => rest.search(other));
    return rest.slice(0, Math.min(...ends.filter((end) => end >= 0), rest.length));
  };
  const listed = (head: RegExp) =>
    pick(section(head), /^- `?([\w-]+)`?/gm).filter((name) => name !== NONE);
  const named = (head: RegExp) => pick(section(head), /`([\w-]+)`/g);
  return {
    attributes: listed(HEADS.attributes),
    events: listed(HEADS.events),
    slots: listed(HEADS.slots),
    parts: named(HEADS.parts),
    tokens: named(HEADS.tokens),
  };
}

/**
 * Reads what the code of an element holds; of one that stands on the base only what it adds, and the event that its
 * errand is named after. `lang` is every element's own; the default slot is there
 * where no template takes it, so that what stands in it gives way to the element. A part is named in a
 * template, or handed to `sheetView`.
 */
export function readPractice(element: string, templates: string): Contract {
  const isDefaultHidden = !/<slot\s*>/.test(templates);
  const attributes = listProperties(element);
  return {
    attributes: sort(/closest\('\[lang\]'\)/.test(element) ? [...attributes, 'lang'] : attributes),
    events: BASE.test(element)
      ? pick(templates, /: Errand<[^=]*= \{\s*name: '([\w-]+)'/g)
      : pick(element, /new CustomEvent\(\s*'([\w-]+)'/g),
    slots: sort([
      ...pick(templates, /<slot name="([\w-]+)"/g),
      ...(isDefaultHidden ? ['default'] : []),
    ]),
    parts: pick(templates, /(?:\bpart="|\bsheetView\(\s*')([\w -]+)["']/g),
    tokens: pick(templates, /var\((--ragbloom-[\w-]+)/g),
  };
}

/** Keys of `static properties`, those of its inner state left out. */
function listProperties(element: string): readonly string[] {
  const { nodes } = parseModule(element);
  const found = nodes.find(
    (node) =>
      node.type === 'PropertyDefinition' &&
      node['static'] === true &&
      nameOf(node['key']) === 'properties',
  );
  const value = found?.['value'] as Node | undefined;
  const rows = (value?.['properties'] ?? []) as readonly Node[];
  return rows
    .filter((row) => row.type !== 'SpreadElement')
    .flatMap((row) => nameProperty(nameOf(row['key']), row['value'] as Node));
}

/** The name of a property to the page: that of its attribute where it has another; none where it is inner state. */
function nameProperty(key: string, options: Node): readonly string[] {
  const rows = (options['properties'] ?? []) as readonly Node[];
  const attribute = rows.find((row) => nameOf(row['key']) === 'attribute')?.['value'] as
    | Node
    | undefined;
  const name = typeof attribute?.['value'] === 'string' ? attribute['value'] : key;
  return isState(options) ? [] : [name];
}

function isState(options: Node): boolean {
  const rows = (options['properties'] ?? []) as readonly Node[];
  return rows.some((row) => nameOf(row['key']) === 'state');
}

function nameOf(key: unknown): string {
  return String((key as Node)['name'] ?? (key as Node)['value']);
}

function pick(text: string, pattern: RegExp): readonly string[] {
  return sort([...text.matchAll(pattern)].flatMap(([, names]) => (names ?? '').split(' ')));
}

function sort(names: readonly string[]): readonly string[] {
  return [...new Set(names)].toSorted();
}
