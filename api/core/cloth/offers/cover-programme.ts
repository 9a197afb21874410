import type { Membership } from '../strips/choose-split.ts';
import type { ProgrammeColumn } from '../strips/start-programme.ts';
import type { Pattern, StripProblem } from '../strips/strip-plan.ts';
import type { Filling } from './keep-largest.ts';
import type { RollOffer, SheetOffer } from './offer.ts';

/** One purchase: off one roll or none, with any of the sheets. */
export interface Cover {
  readonly demand: readonly number[];
  readonly roll?: { readonly offer: RollOffer; readonly problem: StripProblem };
  readonly sheets: readonly { readonly offer: SheetOffer; readonly fillings: readonly Filling[] }[];
  /** What a piece of each kind costs that is left out; where absent, none may be. */
  readonly leftOut?: readonly number[];
}

/** A cover as a linear programme over some of its patterns. */
export interface CoverProgramme {
  /** Steps of the roll, packs of each sheet, fillings, patterns, pieces left out: in this order. */
  readonly columns: readonly ProgrammeColumn[];
  /** Pieces; packs to be had; sheets; then length for strips and fewest steps, where there is a roll. */
  readonly needs: readonly number[];
  readonly fillings: readonly { readonly sheet: number; readonly filling: Filling }[];
  readonly patterns: readonly Pattern[];
}

/**
 * Writes a cover out as a programme: pieces must be placed, on sheets that were bought and in strips
 * that the steps bought have length for.
 *
 * @param fillings and patterns, those that may take part
 */
export function writeProgramme(
  cover: Cover,
  { fillings, patterns }: Pick<CoverProgramme, 'fillings' | 'patterns'>,
): CoverProgramme {
  const { demand, roll, sheets } = cover;
  const kinds = demand.length;
  const rows = kinds + 2 * sheets.length;
  const needs = [
    ...demand,
    ...sheets.map(({ offer }) => -(offer.most ?? MANY)),
    ...sheets.map(() => 0),
    ...(roll === undefined ? [] : [roll.offer.squaring, roll.offer.least]),
  ];
  const give = (...given: readonly (readonly [number, number])[]) => {
    const gives = needs.map(() => 0);
    for (const [row, amount] of given) gives[row] = amount;
    return gives;
  };
  const columns = [
    ...(roll === undefined
      ? []
      : [{ cost: roll.offer.cost, gives: give([rows, roll.offer.room], [rows + 1, 1]) }]),
    ...sheets.map(({ offer }, at) => ({
      cost: offer.cost,
      gives: give([kinds + at, -1], [kinds + sheets.length + at, offer.count]),
    })),
    ...fillings.map(({ sheet, filling }) => ({
      cost: 0,
      gives: give(...filling.counts.entries(), [kinds + sheets.length + sheet, -1]),
    })),
    ...patterns.map(({ level, counts }) => ({
      cost: 0,
      gives: give(...counts.entries(), [rows, -(roll?.problem.levels[level]?.height ?? 0)]),
    })),
    ...(cover.leftOut ?? []).map((cost, kind) => ({ cost, gives: give([kind, 1]) })),
  ];
  return { columns, needs, fillings, patterns };
}

/** More packs than any purchase has. */
const MANY = 1e6;

/** The sums to ask whole numbers of: what is bought; strips of some height or more. */
export function listCoverSets(
  { roll, sheets }: Cover,
  { columns, fillings, patterns }: CoverProgramme,
): readonly (readonly Membership[])[] {
  const bought = (roll === undefined ? 0 : 1) + sheets.length;
  const members = (has: (name: number) => boolean): Membership =>
    Uint8Array.from(columns, (_, name) => (has(name) ? 1 : 0));
  const first = bought + fillings.length;
  const levels = [...(roll?.problem.levels.keys() ?? [])].map((level) =>
    members((name) => (patterns[name - first]?.level ?? -1) >= level),
  );
  return [Array.from({ length: bought }, (_, own) => members((name) => name === own)), levels];
}
