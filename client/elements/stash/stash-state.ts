import type { StashRequest } from '#core/contract.ts';
import { SIZE_LIMITS } from '#core/limits.ts';
import type { Fault } from '#core/outcome.ts';
import { type DraftOf, writeQuery } from '../../data/draft.ts';
import { packRows, readRows, writeRows } from '../../data/rows.ts';
import type { ShownStash, ShownStashOption } from '../../data/stash-answer-schema.ts';
import type { TableChange } from '../../data/table-actions.ts';
import type { Column, FileFault } from '../../data/table-file.ts';
import { EXAMPLE_STASH } from './example-stash.ts';

/** A stash as it is being written, its rows under `pieces`. */
export type StashDraft = DraftOf<StashRequest>;

/** What was last done to the whole table, and can be put back. */
export interface Done {
  readonly kind: TableChange;
  readonly rows: number;
  readonly before: StashDraft;
}

/** All that the element knows; views only read it. */
export interface StashState {
  readonly draft: StashDraft;
  /** What is wrong with the draft, each at its row in the table. */
  readonly faults: readonly Fault[];
  /** What the host or the address asked for and could not be had. */
  readonly hostFaults: readonly Fault[];
  readonly fileFault?: FileFault | undefined;
  readonly done?: Done | undefined;
  /** The last good answer. */
  readonly answer?: ShownStash | undefined;
  readonly from: 'service' | 'device';
  readonly isBusy: boolean;
  readonly isUnreachable: boolean;
  /** The quilt that is worked out, by its cut and grid; the largest where it is none of those there are. */
  readonly chosen: string;
  /** Whether there is a column for prints that several pieces show. */
  readonly hasPrints: boolean;
}

/** Before anything was asked. */
export const FIRST_STATE: StashState = {
  draft: {},
  faults: [],
  hostFaults: [],
  from: 'service',
  isBusy: true,
  isUnreachable: false,
  chosen: '',
  hasPrints: false,
};

/** What is on the table before anybody has typed. */
export const FIRST_DRAFT: StashDraft = writeRows<StashDraft>(
  { touch: 'sides' },
  'pieces',
  EXAMPLE_STASH,
);

/** The list that the rows of the table stand under. */
export const LIST = 'pieces';
export const MOST_ROWS = SIZE_LIMITS.stashPieces;

/** The columns of a file, in the order in which they are saved. */
export const COLUMNS: readonly Column[] = [
  { name: 'role', head: 'role', isNeeded: true },
  { name: 'id', head: 'name', isNeeded: true },
  { name: 'print', head: 'print' },
  { name: 'width', head: 'width', isNeeded: true, measure: 'length' },
  { name: 'length', head: 'length', isNeeded: true, measure: 'length' },
  { name: 'count', head: 'count' },
];

/** The unit of a draft. */
export function unitOf(draft: { readonly unit?: string }): 'in' | 'cm' {
  return draft.unit === 'cm' ? 'cm' : 'in';
}

/** Makes a question of a draft; `places` tells where each piece of it stands in the table. */
export function writeAsked(draft: StashDraft): {
  readonly query: string;
  readonly places: readonly number[];
  readonly isEmpty: boolean;
} {
  const { draft: packed, places } = packRows(draft, LIST);
  const kept = Object.fromEntries(Object.entries(packed).filter(([, typed]) => typed !== ''));
  return { query: writeQuery(kept), places, isEmpty: places.length === 0 };
}

/** Whether any piece of a draft names the print that it shows. */
export function namesPrints(draft: StashDraft): boolean {
  return readRows(draft, LIST).some(({ print = '' }) => print !== '');
}

/** What tells one quilt from the others of an answer. */
export function nameOption({ cut, columns, rows }: ShownStashOption): string {
  return `${cut} ${columns} ${rows}`;
}

/** The quilt to work out: the one chosen, else the largest. */
export function findOption({ answer, chosen }: StashState): ShownStashOption | undefined {
  const options = answer?.options ?? [];
  return options.find((option) => nameOption(option) === chosen) ?? options[0];
}

/** Places outside the table that have a field of their own, which says what is wrong there. */
const FIELDS = /^(block\.(cut|seam)|squaring)$/;
/** Cells of the table. */
const CELLS = /^pieces\.\d+\.(role|id|print|width|length|count)$/;

/** Faults that no field shows. */
export function listOtherFaults(faults: readonly Fault[]): readonly Fault[] {
  return faults.filter(({ path }) => {
    const place = path.join('.');
    return !FIELDS.test(place) && !CELLS.test(place);
  });
}

/** The cells of a row in the order in which the table shows them. */
export function listNames(hasPrints: boolean): readonly string[] {
  return ['id', 'role', ...(hasPrints ? ['print'] : []), 'width', 'length', 'count'];
}
