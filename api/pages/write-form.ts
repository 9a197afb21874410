import { escapeText } from '#core/drawing/escape-text.ts';
import { nameField } from './name-field.ts';
import { listPairs, type Pair } from './split-query.ts';
import type { View } from './views.ts';

/** A form of plain HTML by which a page is asked again. */
export interface AskForm {
  readonly view: View;
  /** Path that it sends to. */
  readonly action: string;
  readonly query: string;
  /** Places that only the host may set, with blanks between them. */
  readonly locked?: string;
  /** Places at fault, which have a field even where the query does not name them. */
  readonly faulty?: readonly string[];
  /** What is carried along for the page itself, with the `_` of their names left off. */
  readonly own: readonly Pair[];
}

/** The form, with a field for each part of the query that has a name; all the rest is carried along. */
export function writeForm({ view, action, query, locked = '', faulty = [], own }: AskForm): string {
  const pairs = listPairs(query);
  const wanted = [...new Set([...faulty, ...view.always])].filter((path) => nameField(path));
  const missing = wanted.filter((path) => !pairs.some(([name]) => name === path));
  const isLocked = (path: string) =>
    locked.split(' ').some((place) => path === place || path.startsWith(`${place}.`));
  const fields = [...pairs, ...missing.map((path): Pair => [path, ''])]
    .filter(([path, value]) => value !== '' || !isLocked(path))
    .map(([path, value]) => (isLocked(path) ? writeHidden(path, value) : writeField(path, value)));
  const carried = own.map(([name, value]) => writeHidden(`_${name}`, value));
  const ways = (view.ways ?? []).filter(([, way]) => !isLocked(way.split(/[.=]/)[0] ?? ''));
  return (
    `<form class="ask" method="get" action="${escapeText(action)}">${fields.join('')}${carried.join('')}` +
    `<button>Ask again</button></form>${writeWays(ways, action, own)}`
  );
}

function writeField(path: string, value: string): string {
  const field = nameField(path);
  if (field === undefined) return writeHidden(path, value);
  const name = escapeText(path);
  const { choices } = field;
  const entry =
    choices === undefined
      ? `<input name="${name}" value="${escapeText(value)}" autocomplete="off">`
      : `<select name="${name}">${choices.map((choice) => writeChoice(choice, value)).join('')}</select>`;
  return `<label>${escapeText(field.name)} ${entry}</label>`;
}

function writeChoice(choice: string, value: string): string {
  return `<option${choice === value ? ' selected' : ''}>${escapeText(choice)}</option>`;
}

function writeHidden(path: string, value: string): string {
  return `<input type="hidden" name="${escapeText(path)}" value="${escapeText(value)}">`;
}

function writeWays(ways: readonly Pair[], action: string, own: readonly Pair[]): string {
  if (ways.length === 0) return '';
  const carried = own
    .map(([name, value]) => `&_${encodeURIComponent(name)}=${encodeURIComponent(value)}`)
    .join('');
  const links = ways.map(
    ([name, query]) => `<a href="${escapeText(`${action}?${query}${carried}`)}">${name}</a>`,
  );
  return `<p>The size in another way: ${links.join(', ')}.</p>`;
}
