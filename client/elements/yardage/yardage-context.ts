import type { Unit } from '#core/contract.ts';
import type { Fault } from '#core/outcome.ts';
import type { ShownYardage } from '../../data/is-yardage-answer.ts';
import type { YardageDraft } from '../../data/piece-rows.ts';
import type { AskStatus } from '../../host/errand.ts';
import type { SaidCaution } from '../../text/cautions/en.ts';
import type { LightWords } from '../../text/light/source.ts';
import type { YardageWords } from '../../text/yardage/source.ts';

/** What a person can do to yardage. */
export interface YardageActions {
  readonly type: (path: string, draft: YardageDraft) => void;
  readonly choose: (draft: YardageDraft) => void;
  readonly measureIn: (unit: Unit) => void;
  readonly retry: () => void;
}

/** All that the views are given. */
export interface YardageContext {
  readonly status: AskStatus<YardageDraft, ShownYardage>;
  readonly words: { readonly light: LightWords; readonly yardage: YardageWords };
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
  readonly act: YardageActions;
}
