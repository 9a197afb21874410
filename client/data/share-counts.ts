import type { AnyDraft } from './draft.ts';

/** Keeps the share of a print of many blocks within what a share may be. */
const SCALE = 10;

/**
 * A plan for another grid: what was a count of blocks of a print becomes a share in the same proportion, since counts
 * that filled one grid do not fill another.
 *
 * @example
 * shareCounts({ 'layers.0.prints.0.count': '30', washes: '2' }) // => { 'layers.0.prints.0.share': '3', washes: '2' }
 */
export function shareCounts<Kind extends AnyDraft>(draft: Kind): Kind {
  const fields = Object.entries(draft).map(([path, value = '']) =>
    /prints\.\d+\.count$/.test(path)
      ? [path.replace(/count$/, 'share'), `${Number(value) / SCALE}`]
      : [path, value],
  );
  return Object.fromEntries(fields) as Kind;
}
