import type { Unit } from '#core/contract.ts';
import type { Fault } from '#core/outcome.ts';
import type { AnyDraft } from '../data/draft.ts';
import type { SaidCaution } from '../text/cautions/en.ts';
import type { LightWords } from '../text/light/source.ts';
import type { AskStatus } from './errand.ts';

/** What a person can do to what is asked. */
export interface LightActions<Kind extends AnyDraft> {
  readonly type: (path: string, draft: Kind) => void;
  readonly choose: (draft: Kind) => void;
  readonly measureIn: (unit: Unit) => void;
  readonly retry: () => void;
}

/** All that the views of a small element are given. */
export interface LightContext<Kind extends AnyDraft, Answer, Words> {
  readonly status: AskStatus<Kind, Answer>;
  readonly words: Words & { readonly light: LightWords };
  /** In which it is asked. */
  readonly unit: Unit;
  /** Lengths of the answer with their unit as plain text, `×` between them. */
  readonly sayLength: (...values: readonly number[]) => string;
  /** Whole minor units as money, where the host names a currency. */
  readonly sayMoney: ((minor: number) => string) | undefined;
  /** What the host asked for and cannot be had, by place. */
  readonly odd: readonly string[];
  /** Origin of the service, before links. */
  readonly api: string;
  readonly isLocked: (path: string) => boolean;
  /** The words of a caution. */
  readonly sayCaution: (caution: SaidCaution) => string;
  /** The sentence for a fault. */
  readonly tell: (fault: Fault) => string;
  readonly act: LightActions<Kind>;
}
