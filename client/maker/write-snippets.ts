import { readCurrency } from '../data/read-currency.ts';
import { COLORS, listFilled, type MakerState } from './maker-state.ts';

/** What a host can copy, each a text of its own. */
export interface Snippets {
  readonly script: string;
  readonly frame: string;
  readonly address: string;
  /** Absent where the view has no drawing. */
  readonly picture?: string;
  /** Address of the frame, which shows what was chosen. */
  readonly preview: string;
}

/**
 * All snippets of what was chosen.
 *
 * @param home origin of the service, without a slash at its end
 */
export function writeSnippets(state: MakerState, home: string): Snippets {
  const { view } = state;
  const query = writeQuery(state);
  const bare = `${home}${join(`/embed/${view.name}`, query)}`;
  const preview = `${home}${join(`/embed/${view.name}`, query, writeWishes(state))}`;
  const linked = `${home}${join(view.page ?? `/embed/${view.name}`, query)}`;
  // Only a frame can carry locks, language and look; without them the whole page does better as a link.
  const address = preview === bare ? linked : preview;
  const size = `width="700" height="${view.height}"`;
  const picture =
    view.image === undefined || query === ''
      ? undefined
      : `<a href="${quote(linked)}"><img src="${quote(`${home}${join(view.image, query)}`)}" width="500" alt="${quote(nameDrawing(state))}"></a>`;
  return {
    script: writeScript(state, { home, query, linked }),
    frame: `<iframe src="${quote(preview)}" ${size} title="${nameView(state)}" loading="lazy"></iframe>`,
    address,
    ...(picture !== undefined && { picture }),
    preview,
  };
}

function writeScript(
  state: MakerState,
  {
    home,
    query,
    linked,
  }: { readonly home: string; readonly query: string; readonly linked: string },
): string {
  const { view, locked, language, currency } = state;
  const tag = `ragbloom-${view.name}`;
  const attributes = Object.entries({
    preset: query,
    locked: locked.join(' '),
    lang: language,
    currency: onceWhole(currency),
  })
    .filter(([, value]) => value !== '')
    .map(([name, value]) => ` ${name}="${quote(value)}"`);
  return [
    `<script src="${home}/embed/v1.js" async></script>`,
    `<style>${tag} { ${writeStyle(state)} }</style>`,
    `<${tag} embedded${attributes.join('')}>`,
    `  <a href="${quote(linked)}">${nameView(state)}</a>`,
    `</${tag}>`,
  ].join('\n');
}

/** The place is kept free from the start, so that nothing jumps. */
function writeStyle({ view, scheme, colors }: MakerState): string {
  return [
    'display: block;',
    `min-height: ${view.height}px;`,
    ...(scheme === '' ? [] : [`color-scheme: ${scheme};`]),
    ...COLORS.flatMap((name) => (colors[name] ? [`--ragbloom-${name}: ${colors[name]};`] : [])),
  ].join(' ');
}

function writeQuery(state: MakerState): string {
  return listFilled(state)
    .map(({ path }) => pair(path, state.values[path]?.trim() ?? ''))
    .join('&');
}

/** What is for the frame itself, each with a `_` before its name. */
function writeWishes({ locked, language, currency, scheme, colors }: MakerState): string {
  const hues = COLORS.map((name) => [name, colors[name]?.slice(1) ?? ''] as const);
  const wishes = [
    ['lang', language],
    ['locked', locked.join(' ')],
    ['currency', onceWhole(currency)],
    ['scheme', scheme],
    ...hues,
  ] as const;
  return wishes
    .filter(([, value]) => value !== '')
    .map(([name, value]) => pair(`_${name}`, value))
    .join('&');
}

/** A currency once it is typed in full: of half a one an element would say that it cannot be used. */
function onceWhole(typed: string): string {
  return readCurrency(typed) === '' ? '' : typed;
}

function pair(name: string, value: string): string {
  return `${name}=${encodeURIComponent(value)}`;
}

function join(path: string, ...queries: readonly string[]): string {
  const query = queries.filter((one) => one !== '').join('&');
  return query === '' ? path : `${path}?${query}`;
}

function quote(text: string): string {
  return text.replaceAll('&', '&amp;').replaceAll('"', '&quot;').replaceAll('<', '&lt;');
}

function nameView({ view }: MakerState): string {
  return NAMES[view.name];
}

function nameDrawing({ view }: MakerState): string {
  return `Drawing to scale: ${NAMES[view.name].toLowerCase()}`;
}

/** What a snippet calls itself on the page of the host, who may say it otherwise. */
const NAMES = {
  size: 'The size of a rag quilt',
  yardage: 'How much cloth to buy',
  wash: 'What the wash does',
  layout: 'Where each print goes',
  plan: 'A plan for a rag quilt',
} as const;
