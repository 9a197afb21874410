import type { Role, Step } from '#core/contract.ts';

/** How a language writes the figures of a step. */
export interface StepManner {
  /** A length in the unit of the answer, with its unit. */
  readonly measure: (length: number) => string;
  /** A length that must not be overstated, with its unit. */
  readonly gap: (length: number) => string;
  /** A length that must not be understated, with its unit. */
  readonly above: (length: number) => string;
  readonly fabric: (name: string) => string;
  readonly role: (name: Role) => string;
}

/** A step as an answer tells it. */
export type SaidStep = Pick<Step, 'id' | 'do' | 'detail' | 'minutes' | 'figures'>;

/** What is to be done, and more of it. */
export type StepWords = readonly [what: string, detail: string];

/** The steps in English are those of the service itself. */
export const en = {
  language: 'en',
  say: ({ do: what, detail }: SaidStep, _manner: StepManner): StepWords => [what, detail],
};
