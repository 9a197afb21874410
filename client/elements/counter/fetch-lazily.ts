import type { Counter } from '../../data/counter-question.ts';
import type { CounterRow } from '../../data/counter-rows.ts';
import type { Sentences } from '../../fields/say-fault.ts';
import { type Language, loadText } from '../../text/languages.ts';
import type { CounterState } from './counter-state.ts';

/** What what is left of the cloth in hand makes, where it is not enough; the search is fetched when first wanted. */
export async function seekNearest(
  counter: Counter | undefined,
  rows: readonly CounterRow[],
  at: number,
): Promise<CounterState['nearest']> {
  const row = rows[at];
  const isShort = row?.left !== undefined && row.left.squares < row.need.squares;
  if (counter?.plan === undefined || !isShort) return undefined;
  const search = await import('../../data/counter-nearest.ts').catch(() => undefined);
  return search ? (search.findNearest(counter, rows, at) ?? 'none') : 'unfetched';
}

/** What exactly is wrong, in words; nothing where they cannot be had, and the next fault asks again. */
export async function learnSentences(language: Language): Promise<Sentences | undefined> {
  const source = await import('../../text/faults/source.ts').catch(() => undefined);
  return source && loadText(source.faultsSource, language);
}

/** An address as a code; what draws it is fetched when first wanted. */
export async function drawAddress(address: string): Promise<CounterState['code']> {
  const drawing = await import('../../drawing/draw-code.ts').catch(() => undefined);
  return drawing ? (drawing.drawCode(address) ?? 'long') : 'unfetched';
}
