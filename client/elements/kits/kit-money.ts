import type { Unit } from '#core/contract.ts';
import { MILLIMETRES } from '#core/length.ts';
import type { Fault } from '#core/outcome.ts';
import type { AnyDraft } from '../../data/draft.ts';
import { readMoney, writeMoneyEntry } from '../../data/money.ts';
import type { Called } from '../../fields/switch-unit.ts';

/** Places of a request that hold money. */
const MONEY = /^(bolts\.\d+\.cost|costs\.(packaging|labour|overhead|price))$/;
const A_LENGTH = /^bolts\.\d+\.cost$/;

/** A draft whose money is in minor units, and the places where what was typed is no amount. */
export function readAmounts(draft: AnyDraft): {
  readonly draft: AnyDraft;
  readonly faults: readonly Fault[];
} {
  const currency = draft['currency'] ?? '';
  const faults: Fault[] = [];
  const read = (path: string, typed: string) => {
    if (!MONEY.test(path)) return typed;
    const minor = readMoney(typed, currency);
    if (minor !== undefined) return `${minor}`;
    faults.push({ code: 'wrong-type', path: path.split('.'), received: typed });
    return typed;
  };
  const entries = Object.entries(draft).map(([path, typed = '']) => [path, read(path, typed)]);
  return { draft: Object.fromEntries(entries), faults };
}

/** A draft of minor units, as an address has them, with its money as people type it. */
export function writeAmounts<Draft extends AnyDraft>(draft: Draft, usual: string): Draft {
  const currency = draft['currency'] ?? usual;
  const write = (path: string, typed: string) =>
    MONEY.test(path) && /^\d{1,12}$/.test(typed) ? writeMoneyEntry(Number(typed), currency) : typed;
  const entries = Object.entries(draft).map(([path, typed = '']) => [path, write(path, typed)]);
  return { currency, ...Object.fromEntries(entries) } as Draft;
}

/**
 * Says the costs of a length in the other unit: of a yard with inches, of a metre with centimetres, to the minor unit.
 *
 * @param called what costs were called in the other unit, by their path, so that switching back loses nothing.
 */
export function switchCosts<Draft extends AnyDraft>(
  draft: Draft,
  unit: Unit,
  { currency, called }: { readonly currency: string; readonly called: Called },
): { readonly draft: Draft; readonly called: Called } {
  const share = MILLIMETRES.yd / MILLIMETRES.m;
  const next: Record<string, { before: string; now: string }> = {};
  const say = (path: string, before: string) => {
    const minor = A_LENGTH.test(path) ? readMoney(before, currency) : undefined;
    if (minor === undefined) return before;
    const known = called[path];
    const other = Math.round(unit === 'cm' ? minor / share : minor * share);
    const now = known?.now === before ? known.before : writeMoneyEntry(other, currency);
    next[path] = { before, now };
    return now;
  };
  const entries = Object.entries(draft).map(([path, typed = '']) => [path, say(path, typed)]);
  return { draft: Object.fromEntries(entries) as Draft, called: next };
}
