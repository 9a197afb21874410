import { html, type TemplateResult } from 'lit';
import type { Unit } from '#core/contract.ts';
import type { Fault } from '#core/outcome.ts';
import type { Draft, DraftPath } from '../../data/draft.ts';
import type { ShownOption } from '../../data/is-plan-answer.ts';
import type { LoadedPlan } from '../../data/load-plan.ts';
import { type Sentences, sayFault as tell } from '../../fields/say-fault.ts';
import { turnUnit } from '../../fields/turn-unit.ts';
import { writeMeasure } from '../../fields/write-figures.ts';
import type { CautionsWords } from '../../text/cautions/source.ts';
import type { MakingText } from '../../text/making-text.ts';
import type { Text } from '../../text/text.ts';
import type { Aside } from './open-aside.ts';
import type { PlanState } from './plan-state.ts';

/** What a person can do to a plan. */
export interface PlanActions {
  /** Types into one place of the draft. */
  readonly edit: (path: DraftPath, value?: string) => void;
  /** Chooses something at one place of the draft. */
  readonly set: (path: DraftPath, value?: string) => void;
  /** Puts another draft on the table. */
  readonly replace: (draft: Draft) => void;
  readonly say: (words: string) => void;
  readonly understand: () => void;
  readonly measureIn: (unit: Unit) => void;
  readonly show: (shown: PlanState['shown']) => void;
  readonly choose: (option: ShownOption) => void;
  readonly tick: (step: string) => void;
  /** Lays something over the plan, or takes it away. */
  readonly lay: (aside?: Aside) => void;
  /** Asks for another plan without putting it on the table. */
  readonly load: (query: string) => Promise<LoadedPlan>;
  readonly retry: () => void;
  readonly print: () => void;
}

/** What every section of the view is given. */
export interface PlanContext {
  readonly state: PlanState;
  readonly text: Text;
  /** In which it is asked. */
  readonly unit: Unit;
  /** In which the answer on the table is; another until there is one to what is asked. */
  readonly said: Unit;
  /** Whether only the host may set a place. */
  readonly isLocked: (path: string) => boolean;
  readonly act: PlanActions;
  /** What exactly is wrong, in words; nothing until they have come. */
  readonly sentences?: Sentences | undefined;
  /** Cautions in the reader's language; until they have come, and in English, they are those of the service. */
  readonly cautions?: CautionsWords | undefined;
}

/** What every section below the first screen is given. */
export interface MakingContext extends PlanContext {
  readonly text: Text & MakingText;
}

/** The sentence for a fault in the reader's language; one that fits all until that has come, and where there is none. */
export function sayFault(
  { text, sentences = {} }: PlanContext,
  fault: Fault | undefined,
): string | undefined {
  return fault && tell(sentences, fault, () => text.light.wrong);
}

/** The sentence for what is wrong at one place of the draft. */
export function sayFaultAt(context: PlanContext, place: DraftPath): string | undefined {
  return sayFault(
    context,
    context.state.faults.find(({ path }) => path.join('.') === place),
  );
}

/** Lengths of the answer with their unit as plain text, `×` between them. */
export function sayLength({ text, said }: PlanContext, ...values: number[]): string {
  return writeMeasure(text.language, said, ...values);
}

/** A length of the answer in the unit of the fields, which may be another until there is an answer in it. */
export function sayInFields({ unit, said }: PlanContext, value: number): number {
  return said === unit ? value : turnUnit(value, unit);
}

/** A figure set large with its unit small, from the text of both. */
export function figureView(said: string): TemplateResult {
  const at = said.indexOf('\u00a0');
  return html`<b>${said.slice(0, at)}</b><small>${said.slice(at)}</small>`;
}
