import type { KitsRequest, SizeName } from '#core/contract.ts';
import { SIZE_LIMITS } from '#core/limits.ts';
import type { Fault } from '#core/outcome.ts';
import { type DraftOf, editDraft, writeQuery } from '../../data/draft.ts';
import type { ShownKits } from '../../data/kits-answer-schema.ts';
import { packRows, placeFault, readRows, writeRows } from '../../data/rows.ts';
import type { TableChange } from '../../data/table-actions.ts';
import type { Column, FileFault } from '../../data/table-file.ts';
import { EXAMPLE_BOLTS } from './example-bolts.ts';
import { readAmounts } from './kit-money.ts';

/** Kits as they are being written: money as people type it, all else as the request has it. */
export type KitsDraft = DraftOf<KitsRequest>;

/** What was last done to the whole table, and can be put back. */
export interface Done {
  readonly kind: TableChange;
  readonly rows: number;
  readonly before: KitsDraft;
}

/** All that the element knows; views only read it. */
export interface KitsState {
  readonly draft: KitsDraft;
  /** What is wrong with the draft, each at its row in the table. */
  readonly faults: readonly Fault[];
  /** What the host or the address asked for and could not be had. */
  readonly hostFaults: readonly Fault[];
  readonly fileFault?: FileFault | undefined;
  readonly done?: Done | undefined;
  /** The last good answer. */
  readonly answer?: ShownKits | undefined;
  readonly from: 'service' | 'device';
  readonly isBusy: boolean;
  readonly isUnreachable: boolean;
  /** Whether there is a column for prints that several bolts show. */
  readonly hasPrints: boolean;
}

/** Before anything was asked. */
export const FIRST_STATE: KitsState = {
  draft: {},
  faults: [],
  hostFaults: [],
  from: 'service',
  isBusy: true,
  isUnreachable: false,
  hasPrints: false,
};

/** How long typing must rest before the service is asked, in milliseconds. */
export const REST = 300;
/** Under this name what was typed is kept on the device. */
export const DRAFT = 'kits';
/** An address longer than this is left as it is: not every program takes one. */
export const LONGEST_ADDRESS = 4000;

/** The list that the rows of the table stand under. */
export const LIST = 'bolts';
export const MOST_ROWS = SIZE_LIMITS.bolts;
/** The currencies of who says nothing of it, as the service takes them. */
const USUAL_CURRENCY = { in: 'USD', cm: 'EUR' } as const;

/** What is on the table before anybody has typed. */
export const FIRST_DRAFT: KitsDraft = writeRows<KitsDraft>(
  {
    'plan.target.columns': '5',
    'plan.target.rows': '6',
    'plan.block.cut': '8',
    currency: USUAL_CURRENCY.in,
    'costs.packaging': '1.50',
    'costs.labour': '4.00',
    'costs.margin': '40',
  },
  LIST,
  EXAMPLE_BOLTS,
);

/** The columns of a file, in the order in which they are saved. */
export const COLUMNS: readonly Column[] = [
  { name: 'role', head: 'role', isNeeded: true },
  { name: 'id', head: 'name', isNeeded: true },
  { name: 'print', head: 'print' },
  { name: 'width', head: 'width', isNeeded: true, measure: 'length' },
  { name: 'length', head: 'length', isNeeded: true, measure: 'length' },
  { name: 'cost', head: 'cost', measure: 'money' },
];

/** The cells of a row in the order in which the table shows them. */
export function listNames(hasPrints: boolean): readonly string[] {
  return ['id', 'role', ...(hasPrints ? ['print'] : []), 'width', 'length', 'cost'];
}

/** The unit of a draft. */
export function unitOf(draft: { readonly unit?: string }): 'in' | 'cm' {
  return draft.unit === 'cm' ? 'cm' : 'in';
}

/** The currency of a draft. */
export function currencyOf(draft: { readonly currency?: string; readonly unit?: string }): string {
  return draft.currency ?? USUAL_CURRENCY[unitOf(draft)];
}

/** What is asked of the service: a flat query, where its bolts stand in the table, and what need not be asked. */
export interface Asked {
  readonly query: string;
  readonly places: readonly number[];
  readonly isEmpty: boolean;
  /** Amounts of money that cannot be read. */
  readonly faults: readonly Fault[];
}

/** Makes a question of a draft: empty rows and fields left out, money in minor units. */
export function writeAsked(draft: KitsDraft): Asked {
  const { draft: packed, places } = packRows(draft, LIST);
  const kept = Object.fromEntries(Object.entries(packed).filter(([, typed]) => typed !== ''));
  const { draft: asked, faults } = readAmounts({ currency: currencyOf(draft), ...kept });
  return {
    query: writeQuery(asked),
    places,
    isEmpty: places.length === 0,
    faults: faults.map((fault) => placeFault(fault, LIST, places)),
  };
}

/** Whether any bolt of a draft names the print that it shows. */
export function namesPrints(draft: KitsDraft): boolean {
  return readRows(draft, LIST).some(({ print = '' }) => print !== '');
}

/** How the size of the quilt is given. */
export type SizeKind = 'own' | 'grid' | SizeName;

/** How the size of a draft is given; one that is given in another way counts as a grid. */
export function findKind(draft: KitsDraft): SizeKind {
  const size = draft['plan.target.size'];
  if (size !== undefined) return size as SizeName;
  return draft['plan.target.width'] === undefined ? 'grid' : 'own';
}

/** Gives the size in another way, starting from the kit on the table. */
export function chooseKind(draft: KitsDraft, kind: SizeKind, answer?: ShownKits): KitsDraft {
  const { columns, rows } = answer?.grid ?? { columns: 5, rows: 6 };
  const given: Readonly<Record<string, KitsDraft>> = {
    own: { 'plan.target.width': '40 in', 'plan.target.height': '50 in' },
    grid: { 'plan.target.columns': `${columns}`, 'plan.target.rows': `${rows}` },
  };
  const kept = Object.entries(draft).filter(([path]) => !path.startsWith('plan.target.'));
  return { ...Object.fromEntries(kept), ...(given[kind] ?? { 'plan.target.size': kind }) };
}

/** How the price comes about. */
export type PriceWay = 'none' | 'margin' | 'markup' | 'price';

/** How the price of a draft comes about. */
export function findWay(draft: KitsDraft): PriceWay {
  const ways = ['margin', 'markup', 'price'] as const;
  return ways.find((way) => draft[`costs.${way}`] !== undefined) ?? 'none';
}

/** Has the price come about in another way. */
export function chooseWay(draft: KitsDraft, way: PriceWay): KitsDraft {
  const kept = Object.entries(draft).filter(
    ([path]) => !/^costs\.(margin|markup|price)$/.test(path),
  );
  const rest: KitsDraft = Object.fromEntries(kept);
  if (way === 'none') return rest;
  return editDraft(rest, `costs.${way}`, way === 'price' ? '' : '40');
}

/** Places that have a field or a cell of their own, which says what is wrong there. */
const FIELDS =
  /^(plan\.target\.(width|height|columns|rows|size)|plan\.block\.cut|kits|perKit\.\w+|costs\.\w+|currency|bolts\.\d+\.(role|id|print|width|length|cost))$/;

/** Faults that no field shows. */
export function listOtherFaults(faults: readonly Fault[]): readonly Fault[] {
  return faults.filter(({ path }) => !FIELDS.test(path.join('.')));
}
