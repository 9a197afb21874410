import { clothEn } from './cloth-en.ts';
import { stashEn } from './stash-en.ts';
import { chooseText, type Text } from './text.ts';

/** What tables of cloth say, in one language. */
export type ClothWords = typeof clothEn;

/** What the page about a stash says, in one language; English sets what there is to say. */
export type StashWords = typeof stashEn;

/** The words that all pages share, those of tables of cloth, and those of the stash. */
export interface StashText {
  readonly text: Text;
  readonly cloth: ClothWords;
  readonly words: StashWords;
}

const LANGUAGES: readonly (readonly [ClothWords, StashWords])[] = [[clothEn, stashEn]];

/**
 * The text about a stash in the first language asked for that there is, else English.
 *
 * @param languages tags such as `de-AT`, best first.
 *
 * @example
 * chooseStashText(['en-GB']).words.language // => 'en'
 */
export function chooseStashText(languages: readonly string[]): StashText {
  const text = chooseText(languages);
  const [cloth, words] = LANGUAGES.find(([{ language }]) => language === text.language) ?? [
    clothEn,
    stashEn,
  ];
  return { text, cloth, words };
}
