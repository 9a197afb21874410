import type { TemplateResult } from 'lit';
import type { DraftPath } from '../../data/draft.ts';
import { type ChoiceChips, choiceChips } from '../../fields/choice-chips.ts';
import { numberField } from '../../fields/number-field.ts';
import { writeEntry } from '../../fields/write-figures.ts';
import { type PlanContext, sayFaultAt } from './plan-context.ts';
import type { PlanState } from './plan-state.ts';

/** One figure of the draft as a field. */
export interface Entry {
  readonly path: DraftPath;
  readonly label: string;
  /** In the field where the draft has nothing there. */
  readonly shown?: number | undefined;
  /** What stands where the field is left empty. */
  readonly usual?: string | number | undefined;
  /** A count has no unit. */
  readonly isCount?: boolean;
  readonly onInput?: (typed: string) => void;
}

/** Chips for the quilt as sewn and as washed. */
export function stateChips(
  { text }: PlanContext,
  chips: Omit<ChoiceChips<PlanState['shown']>, 'choices'>,
): TemplateResult {
  const { sewn, washed } = text.states;
  return choiceChips({
    ...chips,
    choices: [
      ['sewn', sewn],
      ['washed', washed],
    ],
  });
}

/** A field for a figure, which may be left empty only where there is a usual one. */
export function entryField(context: PlanContext, entry: Entry): TemplateResult {
  const { state, unit, act, text } = context;
  const { path, usual, isCount } = entry;
  const isInches = !isCount && unit === 'in';
  return numberField({
    id: path.replaceAll('.', '-'),
    label: entry.label,
    value: state.draft[path] ?? writeEntry(entry.shown ?? '', unit),
    unit: isCount ? undefined : unit,
    placeholder: writeEntry(usual ?? '', unit),
    fractions: isInches ? text.fractions : undefined,
    isLocked: context.isLocked(path),
    reason: text.light.locked,
    fault: sayFaultAt(context, path),
    onInput:
      entry.onInput ??
      ((typed) => act.edit(path, typed === '' && usual !== undefined ? undefined : typed)),
  });
}
