import type { Fault } from '#core/outcome.ts';
import type { ReadWish } from '#core/wish/read-wish.ts';
import { type Draft, editDraft } from '../../data/draft.ts';
import type { ShownOption, ShownPlan } from '../../data/is-plan-answer.ts';
import type { AskStatus } from '../../host/errand.ts';
import type { Aside } from './open-aside.ts';
import type { Below } from './plan-view-below.ts';

/** All that the element knows; views only read it. */
export interface PlanState extends AskStatus<Draft, ShownPlan> {
  readonly wishText: string;
  readonly wishFault?: Fault | undefined;
  /** What was read in the words of the wish. */
  readonly wishRead?: ReadWish | undefined;
  readonly shown: 'sewn' | 'washed';
  /** Ids of the steps that are done. */
  readonly done: readonly string[];
  /** What lies below the first screen, once it has come. */
  readonly below?: Below | 'missing' | undefined;
  /** What stands over the plan. */
  readonly aside?: Aside | undefined;
}

/** What it knows beside its question, before anything was asked. */
export const FIRST_OWN = { wishText: '', shown: 'washed', done: [] } as const;

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

/** Places that have a field of their own, which says what is wrong there. */
const FIELDS =
  /^(target\.(width|height|size|columns|rows|bed\.\w+)|block\.\w+|layers\.\d+\.width)$/;

/** Faults that no field shows. */
export function listOtherFaults(faults: readonly Fault[]): readonly Fault[] {
  return faults.filter(({ path }) => !FIELDS.test(path.join('.')));
}
