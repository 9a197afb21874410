import { type CautionsWords, cautionsSource } from './cautions/source.ts';
import { type SharedWords, sharedSource } from './shared/source.ts';
import { type WashWords, washSource } from './wash/source.ts';

/** The words that all elements share, and those of the wash. */
export interface WashText {
  readonly text: SharedWords;
  readonly cautions: CautionsWords;
  readonly words: WashWords;
}

/**
 * The text about the wash, in English whatever language is asked for.
 *
 * @example
 * chooseWashText(['en-GB']).words.language // => 'en'
 */
export function chooseWashText(_languages: readonly string[]): WashText {
  return { text: sharedSource.en, cautions: cautionsSource.en, words: washSource.en };
}
