import type { FabricName, Unit } from '#core/contract.ts';
import type { Fault } from '#core/outcome.ts';
import { FABRIC_NAMES } from '../../data/names.ts';
import type { ShownSwatch } from '../../data/wash-answer-schema.ts';
import { writeMeasure } from '../../fields/write-figures.ts';
import type { WashText } from '../../text/wash-text.ts';
import type { CellName, Direction } from './swatch-table.ts';
import type { SizeKind, WashDraft, WashState } from './wash-state.ts';

/** What a person can do to a wash. */
export interface WashActions {
  /** Types into one field of the quilt. */
  readonly edit: (path: keyof WashDraft & string, value?: string) => void;
  /** Puts another quilt on the table. */
  readonly replace: (draft: WashDraft) => void;
  readonly typeCell: (cloth: number, row: number, name: CellName, typed: string) => void;
  /** Gives a cloth another name or another count of washes. */
  readonly name: (cloth: number, change: { fabric?: string; washes?: string }) => void;
  readonly addCloth: () => void;
  readonly removeCloth: (cloth: number) => void;
  readonly clear: () => void;
  readonly measureIn: (unit: Unit) => void;
  readonly give: (kind: SizeKind) => void;
  /** Draws the quilt after another count of washes. */
  readonly show: (index: number) => void;
  readonly retry: () => void;
  readonly print: () => void;
  readonly printSheet: () => void;
}

/** What every section of the view is given. */
export interface WashContext extends WashText {
  readonly state: WashState;
  readonly unit: Unit;
  /** Whether only the host may set a place. */
  readonly isLocked: (path: string) => boolean;
  readonly act: WashActions;
}

/** The sentence for a fault in the reader's language; a later service may tell of one that has none yet. */
export function sayFault({ text }: WashContext, fault: Fault | undefined): string | undefined {
  return fault && (text.faults[fault.code] ?? text.faults.internal)(fault);
}

/** The sentence for what is wrong at one field of the quilt, or under it. */
export function sayFaultAt(context: WashContext, place: string): string | undefined {
  const isThere = ({ path }: Fault) => `${path.join('.')}.`.startsWith(`${place}.`);
  return sayFault(context, context.state.faults.find(isThere));
}

/** Lengths with their unit as plain text, `×` between them. */
export function sayLength({ text, unit }: WashContext, ...values: number[]): string {
  return writeMeasure(text.language, unit, ...values);
}

/** A percentage with one decimal. */
export function sayPercent({ text }: WashContext, value: number): string {
  return writeMeasure(text.language, '%', value);
}

/** A cloth as people call it: a fabric of the table, the test block, or the name that it was given. */
export function sayCloth({ text, words }: WashContext, fabric: string): string {
  if (fabric === 'sandwich') return words.swatches.sandwich;
  return isFabric(fabric) ? text.fabric(fabric) : fabric;
}

/** Whether a name is of a fabric that the table knows. */
export function isFabric(name: string): name is FabricName {
  return FABRIC_NAMES.some((known) => known === name);
}

/** A dimensional change of the standards as the shrink that people speak of: above zero it got smaller. */
export function shrinkOf(change: number): number {
  return change === 0 ? 0 : -change;
}

/** One line of what swatches say, without their spread. */
export function sayChange(context: WashContext, change: number): string {
  const { ruler } = context.words;
  const word = change > 0 ? ruler.grows : ruler.shrinks;
  return `${word} ${sayPercent(context, Math.abs(change))}`;
}

/** The results for one cloth and count of washes, along before across. */
export function findResults(
  { state }: WashContext,
  fabric: string,
  washes: string,
): readonly ShownSwatch[] {
  const name = fabric.trim() === '' ? 'cloth' : fabric.trim();
  const key = name.toLowerCase().replace(/\s+/g, '-');
  const isSame = (one: ShownSwatch) =>
    (one.fabric === name || one.fabric === key) && one.washes === Number(washes || '1');
  const order: readonly Direction[] = ['length', 'width'];
  return (state.answer?.swatches ?? [])
    .filter(isSame)
    .toSorted((one, other) => order.indexOf(one.direction) - order.indexOf(other.direction));
}
