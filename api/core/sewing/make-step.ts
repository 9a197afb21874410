import type { CautionCode, Stage, Step, StepFigure } from '../contract.ts';
import { roundTo } from '../length.ts';

/** What a step says and holds. */
export interface StepWords {
  readonly do: string;
  readonly count: number;
  readonly detail: string;
  readonly minutes?: number;
  readonly figures?: Readonly<Record<string, StepFigure>>;
  readonly cautions?: readonly CautionCode[];
}

/**
 * Puts a step together; without minutes it takes none, without figures it names none.
 *
 * @example
 * makeStep('trim', 'wash', { do: 'Trim', count: 1, detail: 'All.' }).minutes // => 0
 */
export function makeStep(id: string, stage: Stage, words: StepWords): Step {
  return {
    id,
    stage,
    do: words.do,
    count: words.count,
    detail: words.detail,
    minutes: roundTo(words.minutes ?? 0, 4),
    figures: words.figures ?? {},
    cautions: words.cautions ?? [],
  };
}
