import type { Unit } from '#core/contract.ts';
import { fromMillimetres, toMillimetres } from '#core/length.ts';
import { writeEntry } from './write-figures.ts';

/** What was typed, by its dotted path. */
type Typed = Readonly<Partial<Record<string, string>>>;

/** What a length was called in the other unit, by its path, so that switching back loses nothing. */
export type Called = Readonly<Record<string, { readonly before: string; readonly now: string }>>;

/** What switching needs to know beside the draft. */
export interface SwitchFacts {
  readonly called: Called;
  /** The input of a plan for this very draft, where its lengths stand as numbers; `undefined` while there is none. */
  readonly input: unknown;
}

/** Places of a request that hold a length; those of `shrink` and `prewash` are percentages. */
export const LENGTHS =
  /(?<!(shrink|prewash)\.)(width|height|length|lengthLeft|drop|cut|seam|snip\w+|selvage|tail|link|bobbin|ease|before|after|ac|bd|fit|squaring|usable|cuts\.\d+)$/i;

/**
 * Says every length of a draft in the other unit, to four decimals. What was typed is kept in `called`: a length
 * that nobody touched in between comes back letter by letter. A length with a unit of its own stays as it is;
 * one that is not understood yet is given the unit it was typed in.
 *
 * @example
 * switchUnit({ 'target.width': '8 1/2', 'target.height': '10' }, 'cm', { called: {}, input: { target: { width: 8.5 } } }).draft // => { 'target.width': '21.59', 'target.height': '25.4', unit: 'cm' }
 */
export function switchUnit<Draft extends Typed>(
  draft: Draft,
  unit: Unit,
  { called, input }: SwitchFacts,
): { readonly draft: Draft; readonly called: Called } {
  const from = draft['unit'] === 'cm' ? 'cm' : 'in';
  if (from === unit) return { draft, called };
  const next: Record<string, { before: string; now: string }> = {};
  const say = (path: string, before: string) => {
    if (!LENGTHS.test(path)) return before;
    const known = called[path];
    const now =
      known?.now === before ? known.before : convert(before, readAt(input, path), [from, unit]);
    next[path] = { before, now };
    return now;
  };
  const said = Object.entries(draft).map(([path, value = '']) => [path, say(path, value)]);
  return { draft: { ...Object.fromEntries(said), unit } as Draft, called: next };
}

function convert(typed: string, read: unknown, [from, to]: readonly [Unit, Unit]): string {
  if (typed === '' || /[a-z"'″′”’]/i.test(typed)) return typed;
  const number = Number(typed);
  const value = Number.isNaN(number) ? read : number;
  if (typeof value !== 'number') return `${typed} ${from}`;
  return writeEntry(fromMillimetres(toMillimetres(value, from), to), to);
}

function readAt(input: unknown, path: string): unknown {
  return path.split('.').reduce((at, key) => Reflect.get(Object(at), key), input);
}
