import type { FabricName, Unit, WashRequest } from '#core/contract.ts';
import type { Fault } from '#core/outcome.ts';
import { type AnyDraft, type DraftOf, writeQuery } from '../../data/draft.ts';
import type { ShownWash } from '../../data/wash-answer-schema.ts';
import type { AskStatus } from '../../host/errand.ts';
import { type Cloth, listPlaces, type Place, readCloths, writeSwatches } from './swatch-table.ts';

/** All of a request but the swatches, which stand in a table of their own. */
export type WashDraft = DraftOf<Omit<WashRequest, 'swatches' | 'washes'>> & {
  /** Wash counts as typed into one field. */
  readonly washes?: string;
};

/** The size given: the one wanted after the wash, or the one sewn before it. */
export type SizeKind = 'wanted' | 'sewn';

/** What was typed: the table, and the quilt. */
export interface Typed {
  readonly cloths: readonly Cloth[];
  readonly draft: WashDraft;
}

/** All that the element knows; views only read it. */
export interface WashState extends Omit<AskStatus<AnyDraft, ShownWash>, 'draft'>, Typed {
  /** Where the swatches that were asked of last stand in the table. */
  readonly places: readonly Place[];
  /** Place in the list of wash counts of the one that is drawn. */
  readonly shown: number;
  /** The swatch sheet is what prints. */
  readonly isSheet: boolean;
}

/** What it knows beside its question, before anything was asked. */
export const FIRST_OWN: Omit<WashState, Exclude<keyof AskStatus<AnyDraft, ShownWash>, 'draft'>> = {
  cloths: [],
  draft: {},
  places: [],
  shown: 0,
  isSheet: false,
};

/** A quilt to begin with: the classic layers, the size of a throw. */
const FIRST: WashDraft = {
  'layers.0.role': 'top',
  'layers.1.role': 'backing',
};
const FIRST_SIZE = {
  in: { 'wanted.width': '40', 'wanted.height': '50' },
  cm: { 'wanted.width': '100', 'wanted.height': '125' },
} as const;

/** The cloth that a layer is of where the request leaves it open. */
export const USUAL_FABRICS: Readonly<Record<'top' | 'middle' | 'backing', FabricName | ''>> = {
  top: 'quilting-cotton',
  middle: '',
  backing: 'flannel',
};

/**
 * Splits a flat query into the table and the rest, both ready for the fields.
 *
 * @param draft as an address or a store on the device has it.
 */
export function splitDraft(draft: AnyDraft): Typed {
  const entries = Object.entries(draft);
  const rest = entries.filter(([path]) => !/^(swatches|washes)\b/.test(path));
  const counts = entries.filter(([path]) => /^washes\b/.test(path)).map(([, typed]) => typed);
  const has = (part: string) => rest.some(([path]) => path.startsWith(part));
  const unit = draft['unit'] === 'cm' ? 'cm' : 'in';
  const isEmpty = entries.every(([path]) => path === 'unit');
  return {
    cloths: readCloths(draft),
    draft: {
      ...(has('layers.') ? {} : FIRST),
      ...(isEmpty ? FIRST_SIZE[unit] : {}),
      ...Object.fromEntries(rest),
      ...(counts.length > 0 && { washes: counts.join(', ') }),
    },
  };
}

/** Whether a size is given, and which. */
export function findSizeKind(draft: WashDraft): SizeKind {
  return draft['sewn.width'] === undefined && draft['sewn.height'] === undefined
    ? 'wanted'
    : 'sewn';
}

/** Takes the size for one wanted or one sewn, its figures as they are. */
export function chooseSizeKind(draft: WashDraft, kind: SizeKind): WashDraft {
  const other = kind === 'sewn' ? 'wanted' : 'sewn';
  const entries = Object.entries(draft).map(([path, typed]) => [
    path.startsWith(`${other}.`) ? path.replace(other, kind) : path,
    typed,
  ]);
  return Object.fromEntries(entries);
}

/** What is asked of the service: a flat query, and where its swatches stand in the table. */
export interface Asked {
  readonly query: string;
  readonly places: readonly Place[];
  /** Fields that are empty and must not be. */
  readonly blanks: readonly Fault[];
}

/** Makes a question of what was typed: half pairs wait, and a size of which nothing was said is left out. */
export function writeAsked({ cloths, draft }: Typed): Asked {
  const places = listPlaces(cloths);
  const { washes = '', ...rest } = draft;
  const kind = findSizeKind(draft);
  const sides = [`${kind}.width`, `${kind}.height`] as const;
  const isSized = sides.some((side) => (draft[side] ?? '').trim() !== '');
  const kept = Object.entries(rest).filter(
    ([path, typed]) => typed !== '' && (isSized || !path.startsWith(`${kind}.`)),
  );
  const blank = sides.filter((side) => isSized && (draft[side] ?? '').trim() === '');
  const counts = washes.split(/[\s,;]+/).filter((count) => count !== '');
  const query = {
    ...Object.fromEntries(kept),
    ...writeSwatches(cloths, places),
    ...Object.fromEntries(counts.map((count, index) => [`washes.${index}`, count])),
  };
  return {
    query: writeQuery(query),
    places,
    blanks: blank.map((side) => ({ code: 'empty', path: side.split('.') })),
  };
}

/** Everything that was typed, half pairs and all, as a flat query to keep on the device. */
export function writeTyped({ cloths, draft }: Typed): AnyDraft {
  const { washes, ...rest } = draft;
  return { ...rest, ...writeSwatches(cloths, listAll(cloths)), ...(washes && { washes }) };
}

/** Every place of the table, along and across of one row side by side. */
export function listAll(cloths: readonly Cloth[]): readonly Place[] {
  return cloths.flatMap(({ rows }, cloth) =>
    rows.flatMap((_, row) => [
      { cloth, row, direction: 'length' } as const,
      { cloth, row, direction: 'width' } as const,
    ]),
  );
}

/** Whether a fault stands where no field is: not in the table, not in the quilt. */
export function hasNoField({ path }: Fault): boolean {
  const field =
    /^(swatches\.\d+\.(before|after|washes|fabric|diagonals\.\w\w)|(wanted|sewn)\.\w+|fit|washes(\.\d+)?)$/;
  return !field.test(path.join('.'));
}

/** Puts a value into one place of a draft, or takes the place out. */
export function setPlace(draft: WashDraft, path: string, value: string | undefined): WashDraft {
  const kept = Object.entries(draft).filter(([key]) => key !== path);
  return Object.fromEntries(value === undefined ? kept : [...kept, [path, value]]);
}

/** The unit that the fields are in. */
export function unitOf(draft: WashDraft): Unit {
  return draft.unit === 'cm' ? 'cm' : 'in';
}
