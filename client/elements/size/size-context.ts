import type { Unit } from '#core/contract.ts';
import type { Fault } from '#core/outcome.ts';
import type { Draft, DraftPath } from '../../data/draft.ts';
import type { ShownSize } from '../../data/is-size-answer.ts';
import type { AskStatus } from '../../host/errand.ts';
import type { SaidCaution } from '../../text/cautions/en.ts';
import type { LightWords } from '../../text/light/source.ts';
import type { SizeWords } from '../../text/size/source.ts';

/** What a person can do to a size. */
export interface SizeActions {
  readonly type: (path: DraftPath, draft: Draft) => void;
  readonly choose: (draft: Draft) => void;
  readonly measureIn: (unit: Unit) => void;
  readonly retry: () => void;
}

/** All that the views are given. */
export interface SizeContext {
  readonly status: AskStatus<Draft, ShownSize>;
  readonly words: { readonly light: LightWords; readonly size: SizeWords };
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
  readonly act: SizeActions;
}
