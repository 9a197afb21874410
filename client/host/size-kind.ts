import type { SizeName } from '#core/contract.ts';
import { type Draft, editDraft } from '../data/draft.ts';
import { writeEntry } from '../fields/write-figures.ts';

/** How the size is given. */
export type TargetKind = 'own' | 'bed' | 'grid' | SizeName;

/** What of a plan another way to give its size starts from. */
export interface Sized {
  readonly grid: { readonly columns: number; readonly rows: number };
  readonly wish: { readonly width: number; readonly height: number };
}

/**
 * Tells how the size of a draft is given.
 *
 * @example
 * findKind({ 'target.columns': '5', 'target.rows': '6' }) // => 'grid'
 */
export function findKind(draft: Draft): TargetKind {
  if (draft['target.columns'] !== undefined) return 'grid';
  if (draft['target.bed.width'] !== undefined) return 'bed';
  return (draft['target.size'] as SizeName | undefined) ?? 'own';
}

/**
 * Gives the size in another way, starting from the figures of the plan on the table.
 *
 * @example
 * chooseKind({ 'target.size': 'lap' }, 'throw') // => { 'target.size': 'throw' }
 */
export function chooseKind(draft: Draft, kind: TargetKind, answer?: Sized): Draft {
  const unit = draft.unit === 'cm' ? 'cm' : 'in';
  const { columns, rows } = answer?.grid ?? { columns: 5, rows: 6 };
  const { width, height } = answer?.wish ?? { width: '50 in', height: '60 in' };
  const targets: Readonly<Record<string, Draft>> = {
    own: { 'target.width': writeEntry(width, unit), 'target.height': writeEntry(height, unit) },
    grid: { 'target.columns': `${columns}`, 'target.rows': `${rows}` },
    bed:
      unit === 'in'
        ? { 'target.bed.width': '60', 'target.bed.length': '80' }
        : { 'target.bed.width': '150', 'target.bed.length': '200' },
  };
  return { ...editDraft(draft, 'target'), ...(targets[kind] ?? { 'target.size': kind }) };
}
