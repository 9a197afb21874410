import { MAKER_VIEWS, type MakerView } from './maker-views.ts';

/** Colours that a host may set, each by its custom property. */
export const COLORS = ['ink', 'sheet', 'ground', 'madder'] as const;

export type ColorName = (typeof COLORS)[number];

/** What has been chosen for a snippet. */
export interface MakerState {
  readonly view: MakerView;
  /** Values by their path, as typed. */
  readonly values: Readonly<Record<string, string>>;
  /** Paths that the reader cannot change. */
  readonly locked: readonly string[];
  readonly language: string;
  readonly currency: string;
  readonly scheme: string;
  readonly colors: Readonly<Partial<Record<ColorName, string>>>;
}

/**
 * What stands there first for a view; language and look stay as they were.
 *
 * @example
 * startState('plan').values // => { 'target.size': 'throw' }
 */
export function startState(name: string, before?: MakerState): MakerState {
  const view = MAKER_VIEWS.find((one) => one.name === name) ?? MAKER_VIEWS[0];
  if (view === undefined) throw new Error('There is no view at all.');
  const firsts = view.fields.flatMap(({ path, first }) => (first ? [[path, first] as const] : []));
  const blank = { language: '', currency: '', scheme: '', colors: {} };
  return { ...(before ?? blank), view, values: Object.fromEntries(firsts), locked: [] };
}

/**
 * The fields that say something, in their order. A width and a height stand in the place of a named size.
 *
 * @example
 * listFilled(startState('size')).map(({ path }) => path) // => ['target.size']
 */
export function listFilled({ view, values }: MakerState): MakerView['fields'] {
  const isSized = Boolean(values['target.width']?.trim() && values['target.height']?.trim());
  const isIdle = (path: string) =>
    isSized ? path === 'target.size' : path === 'target.width' || path === 'target.height';
  return view.fields.filter(({ path }) => values[path]?.trim() && !isIdle(path));
}
