import type { SizeName } from '#core/contract.ts';
import type { Fault } from '#core/outcome.ts';
import type { ReadWish } from '#core/wish/read-wish.ts';
import { type Draft, editDraft } from '../../data/draft.ts';
import type { ShownOption, ShownPlan } from '../../data/plan-answer-schema.ts';
import { writeEntry } from '../../fields/write-figures.ts';
import type { Aside } from './open-aside.ts';

/** All that the element knows; views only read it. */
export interface PlanState {
  readonly draft: Draft;
  readonly wishText: string;
  /** What is wrong with the draft. */
  readonly faults: readonly Fault[];
  /** What the host or the address asked for and could not be had. */
  readonly hostFaults: readonly Fault[];
  readonly wishFault?: Fault | undefined;
  /** What was read in the words of the wish. */
  readonly wishRead?: ReadWish | undefined;
  /** The last good plan. */
  readonly answer?: ShownPlan;
  readonly from: 'service' | 'device';
  readonly isBusy: boolean;
  readonly isUnreachable: boolean;
  readonly shown: 'sewn' | 'washed';
  /** Ids of the steps that are done. */
  readonly done: readonly string[];
  /** What stands over the plan. */
  readonly aside?: Aside | undefined;
}

/** Before anything was asked. */
export const FIRST_STATE: PlanState = {
  draft: {},
  wishText: '',
  faults: [],
  hostFaults: [],
  from: 'service',
  isBusy: true,
  isUnreachable: false,
  shown: 'washed',
  done: [],
};

/** How the size is given. */
export type TargetKind = 'own' | 'bed' | 'grid' | SizeName;

/** The size that is on the table before anybody has said a word. */
export const FIRST_TARGET: Draft = { 'target.size': 'throw' };

/** Layers as the fields show them, where the request leaves them to the default. */
const CLASSIC: Draft = { 'layers.0.role': 'top', 'layers.1.role': 'backing' };

/**
 * A draft that the fields can show: with a target and with layers.
 *
 * @example
 * completeDraft({ 'target.size': 'lap' }) // => { 'layers.0.role': 'top', 'layers.1.role': 'backing', 'target.size': 'lap' }
 */
export function completeDraft(draft: Draft): Draft {
  const has = (part: string) => Object.keys(draft).some((path) => path.startsWith(part));
  return {
    ...(has('target.') ? {} : FIRST_TARGET),
    ...(has('layers.') ? {} : CLASSIC),
    ...draft,
  };
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

/** Gives the size in another way, starting from the figures of the plan on the table. */
export function chooseKind(draft: Draft, kind: TargetKind, answer?: ShownPlan): Draft {
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

/**
 * Takes another plan by its blocks and their cut, whatever the wish was.
 *
 * @example
 * chooseGrid({ 'target.size': 'lap' }, { columns: 5, rows: 6, cut: 8.5 }) // => { 'block.cut': '8.5', 'target.columns': '5', 'target.rows': '6' }
 */
export function chooseGrid(
  draft: Draft,
  { cut, columns, rows }: Pick<ShownOption, 'cut' | 'columns' | 'rows'>,
): Draft {
  return {
    ...editDraft(editDraft(draft, 'block.cut', `${cut}`), 'target'),
    'target.columns': `${columns}`,
    'target.rows': `${rows}`,
  };
}

/** Prints that no block is left for. */
export function listIdle(answer?: ShownPlan): readonly (string | undefined)[] {
  return answer?.fabrics.filter(({ pieces }) => pieces === 0).map(({ print }) => print) ?? [];
}

/** Whether a plan has the blocks that an option promised. */
export function isSameGrid({ columns, rows }: ShownOption, { grid }: ShownPlan): boolean {
  return grid.columns === columns && grid.rows === rows;
}

/**
 * The places of a draft that were left empty and may not be.
 *
 * @example
 * findBlank({ 'target.width': '', 'target.height': '50' }) // => [{ code: 'empty', path: ['target', 'width'] }]
 */
export function findBlank(draft: Draft): readonly Fault[] {
  return Object.entries(draft)
    .filter(([, value]) => value === '')
    .map(([path]) => ({ code: 'empty', path: path.split('.') }));
}

/** Places that have a field of their own, which says what is wrong there. */
const FIELDS =
  /^(target\.(width|height|size|columns|rows|bed\.\w+)|block\.\w+|layers\.\d+\.width)$/;

/** Faults that no field shows. */
export function listOtherFaults(faults: readonly Fault[]): readonly Fault[] {
  return faults.filter(({ path }) => !FIELDS.test(path.join('.')));
}
