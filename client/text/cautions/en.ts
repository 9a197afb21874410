import type { Caution } from '#core/contract.ts';

/** Figures of an answer that a caution may name, as they are written in the language; what is not there is not named. */
export interface CautionFigures {
  readonly snips?: number;
  /** What is left between snip and stitching, with its unit. */
  readonly clearance?: string;
  /** Where four corners meet, with its unit. */
  readonly thickness?: string;
  readonly needle?: string;
  readonly machine?: 'household' | 'large' | 'laundry';
  /** The label of a kit is at stake, not labels in general. */
  readonly isDraftLabel?: boolean;
}

/** A caution as an answer tells it; a later service may tell one whose code nobody here knows. */
export type SaidCaution = Pick<Caution, 'severity' | 'text'> & { readonly code: string };

/** The cautions in English are those of the service itself. */
export const en = {
  language: 'en',
  say: ({ text }: SaidCaution, _figures: CautionFigures): string => text,
};
