import type { Fault } from '#core/outcome.ts';
import type { Pair } from './split-query.ts';

/** What the host of a frame asks of it beside the question itself. */
export interface FrameWishes {
  /** Language of the element, as an attribute `lang` has it. */
  readonly lang?: string;
  /** Places that only the host may set, with blanks between them. */
  readonly locked?: string;
  /** Three letters (ISO 4217). */
  readonly currency?: string;
  /** `light` or `dark`; else as the reader's device has it. */
  readonly scheme?: string;
  /** Colours by the custom property that each goes to, such as `['madder', '#a3302c']`. */
  readonly colors: readonly Pair[];
  readonly faults: readonly Fault[];
}

const COLOR = /^[0-9a-f]{6}$/i;

/** What each may be, as a pattern and in words. */
const RULES: ReadonlyMap<string, readonly [pattern: RegExp, words: string | readonly string[]]> =
  new Map<string, readonly [RegExp, string | readonly string[]]>([
    ['lang', [/^(en|es|de|fr)$/, ['en', 'es', 'de', 'fr']]],
    ['locked', [/^[A-Za-z][\w.-]*( [A-Za-z][\w.-]*)*$/, 'dotted names with blanks between them']],
    ['currency', [/^[A-Z]{3}$/, 'three capital letters, such as EUR']],
    ['scheme', [/^(light|dark)$/, ['light', 'dark']]],
    ['ground', [COLOR, 'six digits from 0 to f']],
    ['ink', [COLOR, 'six digits from 0 to f']],
    ['sheet', [COLOR, 'six digits from 0 to f']],
    ['madder', [COLOR, 'six digits from 0 to f']],
  ]);

/**
 * Reads what is for the frame itself. Whatever is wrong is told as a fault, and the rest is used.
 *
 * @param own names without the `_` that they have in the address
 * @example
 * readWishes([['lang', 'de'], ['madder', '336699']]) // => { lang: 'de', colors: [['madder', '#336699']], faults: [] }
 */
export function readWishes(own: readonly Pair[]): FrameWishes {
  const faults = own.flatMap(([name, value], at) => judge(name, value, own.slice(0, at)));
  const sound = new Map(own.filter(([name, value]) => RULES.get(name)?.[0].test(value)));
  const colors = [...sound].filter(([name]) => RULES.get(name)?.[0] === COLOR);
  const pick = (name: string) => {
    const value = sound.get(name);
    return value === undefined ? {} : { [name]: value };
  };
  return {
    ...pick('lang'),
    ...pick('locked'),
    ...pick('currency'),
    ...pick('scheme'),
    colors: colors.map(([name, value]) => [name, `#${value.toLowerCase()}`]),
    faults,
  };
}

function judge(name: string, value: string, before: readonly Pair[]): readonly Fault[] {
  const path = [`_${name}`];
  const rule = RULES.get(name);
  if (rule === undefined) {
    const expected = [...RULES.keys()].map((known) => `_${known}`);
    return [{ code: 'unknown-key', path, expected, received: name }];
  }
  if (before.some(([known]) => known === name)) return [{ code: 'repeated-key', path }];
  const [pattern, expected] = rule;
  return pattern.test(value) ? [] : [{ code: 'not-one-of', path, expected, received: value }];
}
