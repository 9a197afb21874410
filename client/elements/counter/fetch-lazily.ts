import type { NearestQuilt } from '../../data/counter-nearest.ts';
import type { Counter } from '../../data/counter-question.ts';
import type { CounterRow } from '../../data/counter-rows.ts';
import type { Sentences } from '../../fields/say-fault.ts';
import { type Language, loadText } from '../../text/languages.ts';
import type { CounterState } from './counter-state.ts';

/** What what is left of the cloth in hand makes, where it is not enough; the search comes when it is first wanted. */
export async function seekNearest(
  counter: Counter | undefined,
  rows: readonly CounterRow[],
  at: number,
): Promise<NearestQuilt | 'none' | undefined> {
  const row = rows[at];
  const isShort = row?.left !== undefined && row.left.squares < row.need.squares;
  if (counter?.plan === undefined || !isShort) return undefined;
  const { findNearest } = await import('../../data/counter-nearest.ts');
  return findNearest(counter, rows, at) ?? 'none';
}

/** What exactly is wrong, in words; nothing where they cannot be had, and the next fault asks again. */
export async function learnSentences(language: Language): Promise<Sentences | undefined> {
  const source = await import('../../text/shared/source.ts').catch(() => undefined);
  return source && (await loadText(source.sharedSource, language)).faults;
}

/** An address as a code; what draws it comes when it is first wanted. */
export async function drawAddress(address: string): Promise<CounterState['code']> {
  const { drawCode } = await import('../../drawing/draw-code.ts');
  return drawCode(address) ?? 'long';
}
