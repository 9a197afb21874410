import type { CounterRow } from '../../data/counter-rows.ts';
import { type CounterText, nameCloth } from './counter-context.ts';
import { speakPurchase } from './speak-purchase.ts';

/** The tag, the event, and under which a list is kept on a device. */
export const NAME = 'ragbloom-counter';

/** What the event `ragbloom-counter` carries. */
export interface CounterDetail {
  /** The query of what is to be bought, as `/v1/plan` takes it; empty while nothing is. */
  readonly question: string;
  /** One for each cloth, in the order of the plan. */
  readonly cloths: readonly {
    /** Yards or metres to ask for; nothing where the bolt is too narrow. */
    readonly amount?: number | undefined;
    readonly unit: 'yd' | 'm';
    readonly isGot: boolean;
  }[];
}

/** What the host is told of the counter. */
export function reportCounter(question: string, rows: readonly CounterRow[]): CounterDetail {
  const cloths = rows.map(({ ask, isGot, need }) => {
    return { amount: ask.buy?.amount, unit: need.unit === 'in' ? 'yd' : 'm', isGot } as const;
  });
  return { question, cloths };
}

/** One sentence for those who hear the page: what to ask for, and whether what is left is enough. */
export function sayRow(text: CounterText, { need, ask, left }: CounterRow): string {
  const { counter } = text;
  const { name } = nameCloth(text, need);
  const amount = ask.buy ? speakPurchase(counter.language, ask.buy) : undefined;
  const asked =
    amount === undefined ? `${name}: ${counter.tooNarrow}.` : counter.said(name, amount);
  if (left === undefined) return asked;
  const isEnough = left.squares >= need.squares;
  return `${asked} ${isEnough ? counter.enough : counter.short}.`;
}
