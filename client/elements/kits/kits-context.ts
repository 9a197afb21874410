import { html, type TemplateResult } from 'lit';
import type { Unit } from '#core/contract.ts';
import type { Fault } from '#core/outcome.ts';
import { writeMoneyEntry } from '../../data/money.ts';
import type { TableActions } from '../../data/table-actions.ts';
import type { ClothCell } from '../../fields/cloth-table.ts';
import { writeMeasure } from '../../fields/write-figures.ts';
import type { KitsText } from '../../text/kits-text.ts';
import { currencyOf, type KitsDraft, type KitsState, LIST } from './kits-state.ts';

/** What a person can do to kits. */
export interface KitsActions extends TableActions {
  /** Types into one field beside the table. */
  readonly edit: (path: keyof KitsDraft & string, value: string) => void;
  /** Chooses something beside the table. */
  readonly replace: (draft: KitsDraft) => void;
  readonly typeCell: (cell: ClothCell, typed: string) => void;
  readonly dropRow: (row: number) => void;
  readonly undo: () => void;
  readonly showPrints: (isOn: boolean) => void;
  readonly measureIn: (unit: Unit) => void;
  /** Has money counted in another currency; amounts stay as typed. */
  readonly payIn: (currency: string) => void;
  readonly retry: () => void;
  readonly print: () => void;
}

/** What every section of the view is given. */
export interface KitsContext extends KitsText {
  readonly state: KitsState;
  readonly unit: Unit;
  readonly act: KitsActions;
}

/** The sentence for a fault in the reader's language; a later service may tell of one that has none yet. */
export function sayFault(
  { text, cloth, words, state }: KitsContext,
  fault: Fault | undefined,
): string | undefined {
  if (fault?.code === 'missing' || fault?.code === 'empty') {
    if (fault.path.at(-1) === 'id') return cloth.noNames;
    return text.faults.empty(fault);
  }
  if (fault?.code === 'wrong-type' && isMoney(fault))
    return words.money.unclear(`${fault.received}`);
  if (fault !== undefined && isMoney(fault) && /^\d+$/.test(`${fault.expected}`)) {
    const expected = writeMoneyEntry(Number(fault.expected), currencyOf(state.draft));
    return text.faults[fault.code]({ ...fault, expected });
  }
  if (fault?.code === 'not-one-of' && fault.path.at(-1) === 'role') return cloth.noRole;
  return fault && (text.faults[fault.code] ?? text.faults.internal)(fault);
}

const isMoney = ({ path }: Fault) =>
  /^(cost|packaging|labour|overhead|price)$/.test(`${path.at(-1)}`);

/** The sentence for what is wrong at one place of the draft. */
export function sayFaultAt(context: KitsContext, place: string): string | undefined {
  return sayFault(
    context,
    context.state.faults.find(({ path }) => path.join('.') === place),
  );
}

/** The sentence for what is wrong in one cell of the table. */
export function sayCellFault(context: KitsContext, { row, name }: ClothCell): string | undefined {
  return sayFaultAt(context, `${LIST}.${row}.${name}`);
}

/** Lengths with their unit as plain text, `×` between them. */
export function sayLength({ text, unit }: KitsContext, ...values: number[]): string {
  return writeMeasure(text.language, unit, ...values);
}

/** A figure set large with its unit small, from the text of both. */
export function figureView(said: string): TemplateResult {
  const at = said.indexOf('\u00a0');
  return html`<b>${said.slice(0, at)}</b><small>${said.slice(at)}</small>`;
}
