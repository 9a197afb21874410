import { type CautionsWords, cautionsSource } from './cautions/source.ts';
import { type ClothWords, clothSource } from './cloth/source.ts';
import { type KitsWords, kitsSource } from './kits/source.ts';
import { type SharedWords, sharedSource } from './shared/source.ts';

/** The words that all elements share, those of tables of cloth, and those of kits. */
export interface KitsText {
  readonly text: SharedWords;
  readonly cautions: CautionsWords;
  readonly cloth: ClothWords;
  readonly words: KitsWords;
}

/**
 * The text about kits, in English whatever language is asked for.
 *
 * @example
 * chooseKitsText(['en-GB']).words.language // => 'en'
 */
export function chooseKitsText(_languages: readonly string[]): KitsText {
  const words = kitsSource.en;
  const faults = { ...sharedSource.en.faults, ...words.faults };
  return {
    text: { ...sharedSource.en, faults },
    cautions: cautionsSource.en,
    cloth: clothSource.en,
    words,
  };
}
