import type { Unit } from '#core/contract.ts';
import type { Fault } from '#core/outcome.ts';
import type { CompareWords } from '../../text/compare/source.ts';
import type { FaultsWords } from '../../text/faults/source.ts';
import type { LightWords } from '../../text/light/source.ts';
import type { CompareState, SideName } from './compare-state.ts';
import type { Doubling } from './double-plan.ts';
import type { Telling } from './say-measure.ts';

/** All that the comparison says. */
export interface CompareText {
  readonly light: LightWords;
  readonly faults: FaultsWords;
  readonly compare: CompareWords;
}

/** What a person can do to a comparison. */
export interface CompareActions {
  readonly type: (side: SideName, typed: string) => void;
  /** Puts a plan twice as large as this one beside it. */
  readonly double: (side: SideName, doubling: Doubling) => void;
  readonly swap: () => void;
  readonly measureIn: (unit: Unit) => void;
  readonly retry: () => void;
}

/** All that the views are given. */
export interface CompareContext {
  readonly state: CompareState;
  readonly words: CompareText;
  readonly telling: Telling;
  /** Origin of the pages, before links. */
  readonly api: string;
  readonly tell: (fault: Fault) => string;
  readonly isLocked: (path: string) => boolean;
  /** Whether a plan twice as large may be put beside this one. */
  readonly canDouble: (side: SideName) => boolean;
  readonly act: CompareActions;
}
