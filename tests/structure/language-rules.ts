import { parseModule } from './parse-module.ts';

/** Words that a text in English cannot do without, and that are none in Spanish, German or French. */
export const ENGLISH =
  /\b(the|and|of|with|your|you|this|that|are|have|from|which|give|cut|sewn|washed|wide|cloth|prints?)\b/i;

/** Texts that are the same in English and in another language, and are to be. */
export const SAME: readonly string[] = [
  'King',
  'Queen',
  'California King',
  'Super King',
  'Name',
  'Plan',
  'Kit',
  'Kits',
  'Total',
  'Danger',
  'Fractions',
  'Fleece',
  'diagonal',
  'page',
];

/** What one language has otherwise than English has it: keys, kinds, lengths of lists, numbers of parameters. */
export function compareShapes(english: unknown, other: unknown, path = 'text'): readonly string[] {
  if (kindOf(english) !== kindOf(other)) {
    return [`${path} is ${kindOf(other)}, in English ${kindOf(english)}.`];
  }
  if (typeof english === 'function' && typeof other === 'function') {
    if (english.length === other.length) return [];
    return [`${path} takes ${other.length} parts, in English ${english.length}.`];
  }
  if (typeof other === 'string') {
    return other.trim() === '' && english !== '' ? [`${path} is empty.`] : [];
  }
  if (typeof english !== 'object' || english === null) return [];
  // An empty group of English is one that the other languages may fill as they need.
  if (Object.keys(english).length === 0) return [];
  const keys = new Set([...Object.keys(english), ...Object.keys(Object(other))]);
  return [...keys].flatMap((key) =>
    compareShapes(Reflect.get(english, key), Reflect.get(Object(other), key), `${path}.${key}`),
  );
}

function kindOf(value: unknown): string {
  return Array.isArray(value) ? 'list' : value === null ? 'null' : typeof value;
}

/** What is written in a file to be read: its texts, and the pieces of those with gaps. */
export function listTexts(source: string): readonly string[] {
  const { nodes } = parseModule(source);
  const keys = new Set(nodes.filter(({ type }) => type === 'Property').map(({ key }) => key));
  return nodes.flatMap((node) => {
    if (keys.has(node) || node.type === 'ImportDeclaration') return [];
    if (node.type === 'Literal' && typeof node['value'] === 'string') return [node['value']];
    if (node.type !== 'TemplateElement') return [];
    return [String(Reflect.get(Object(node['value']), 'cooked'))];
  });
}

/** English that was left in a text of another language, a sentence each. */
export function findEnglish(source: string, english: string): readonly string[] {
  const originals = new Set(listTexts(english).filter((text) => /\p{L}{3}/u.test(text)));
  return listTexts(source)
    .filter((text) => /\p{L}{3}/u.test(text) && !/^[.#]/.test(text))
    .flatMap((text) => {
      if (
        originals.has(text) &&
        !SAME.includes(text.replace(/^\P{L}+|\P{L}+$/gu, '')) &&
        !/^[a-z-]+$/i.test(text)
      ) {
        return [`“${text}” is as it is in English.`];
      }
      const [word] = ENGLISH.exec(text) ?? [];
      return word === undefined || /^[a-z]+(-[a-z]+)*$/.test(text)
        ? []
        : [`“${text}” says ${word}.`];
    });
}

/** Manners of texts that hold in every language, a sentence each. */
export function judgeTexts(source: string): readonly string[] {
  const loud = listTexts(source).filter((text) => text.includes('!'));
  const straight = listTexts(source).filter((text) => /\p{L}'\p{L}/u.test(text));
  const counted = source.match(/[!=]== ?[12] (?:\?|&&)/g) ?? [];
  return [
    ...loud.map((text) => `“${text}” exclaims.`),
    ...straight.map((text) => `“${text}” has a typewriter’s apostrophe.`),
    ...counted.map(
      (found) => `A form is chosen by ${found}: the plural rules of Intl know better.`,
    ),
  ];
}
