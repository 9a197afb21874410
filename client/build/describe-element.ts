/** A name that an element promises, and what is said of it. */
export interface Told {
  readonly name: string;
  readonly description: string;
}

/** What the docblock of an element's class promises to the page that holds it. */
export interface ElementPromise {
  /** Name of the class. */
  readonly name: string;
  readonly description: string;
  readonly attributes: readonly Told[];
  /** Properties that have no attribute. */
  readonly fields: readonly Told[];
  readonly events: readonly Told[];
  readonly slots: readonly Told[];
  readonly parts: readonly Told[];
  readonly tokens: readonly Told[];
}

const HEADS = /^(Attributes and properties|Events|Slots|Parts:|Custom properties:)/m;
const ITEM = /^- `?([\w-]+)`?( \([^)]*\))?: /;

/**
 * Reads the docblock of an element's class.
 *
 * @param source text of the file that declares the class.
 */
export function describeElement(source: string): ElementPromise {
  const [, block = '', name = ''] =
    /\/\*\*((?:(?!\*\/)[\s\S])*)\*\/\nexport (?:abstract )?class (\w+)/.exec(source) ?? [];
  const text = block.replaceAll(/^ \* ?/gm, '').trim();
  const [description = '', ...sections] = text.split(new RegExp(HEADS, 'm'));
  const find = (head: string) => {
    const at = sections.indexOf(head);
    return at < 0 ? '' : (sections[at + 1] ?? '');
  };
  const properties = listItems(find('Attributes and properties'));
  const isField = ({ note }: { readonly note: string }) => note.includes('property only');
  return {
    name,
    description: description.trim().replaceAll(/\s+/g, ' '),
    attributes: properties.filter((one) => !isField(one)).map(strip),
    fields: properties.filter(isField).map(strip),
    events: listItems(find('Events')).map(strip),
    slots: listItems(find('Slots')).map(strip),
    parts: listNames(find('Parts:')),
    tokens: listNames(find('Custom properties:')),
  };
}

/** Items of a list, one of which may go on over several lines. */
function listItems(section: string) {
  return section.split(/\n(?=- )/).flatMap((item) => {
    const [head = '', name = '', note = ''] = ITEM.exec(item) ?? [];
    if (name === '') return [];
    return [{ name, note, description: item.slice(head.length).trim().replaceAll(/\s+/g, ' ') }];
  });
}

function strip({ name, description }: Told): Told {
  return { name, description };
}

/** Names in a running list, each with what stands behind it in brackets. */
function listNames(section: string): readonly Told[] {
  const found = section.matchAll(/`([\w-]+)`(?: \(([^)]*)\))?/g);
  return [...found].map(([, name = '', description = '']) => ({ name, description }));
}
