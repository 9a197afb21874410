import { type CautionsWords, cautionsSource } from './cautions/source.ts';
import { type ClothWords, clothSource } from './cloth/source.ts';
import { type SharedWords, sharedSource } from './shared/source.ts';
import { type StashWords, stashSource } from './stash/source.ts';

/** The words that all elements share, those of tables of cloth, and those of the stash. */
export interface StashText {
  readonly text: SharedWords;
  readonly cautions: CautionsWords;
  readonly cloth: ClothWords;
  readonly words: StashWords;
}

/**
 * The text about a stash, in English whatever language is asked for.
 *
 * @example
 * chooseStashText(['en-GB']).words.language // => 'en'
 */
export function chooseStashText(_languages: readonly string[]): StashText {
  return {
    text: sharedSource.en,
    cautions: cautionsSource.en,
    cloth: clothSource.en,
    words: stashSource.en,
  };
}
