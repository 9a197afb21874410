import { chooseText, type Text } from './text.ts';
import { washEn } from './wash-en.ts';

/** What the page about the wash says, in one language; English sets what there is to say. */
export type WashWords = typeof washEn;

/** The words that all pages share, and those of the wash. */
export interface WashText {
  readonly text: Text;
  readonly words: WashWords;
}

const LANGUAGES: readonly WashWords[] = [washEn];

/**
 * The text about the wash in the first language asked for that there is, else English.
 *
 * @param languages tags such as `de-AT`, best first.
 *
 * @example
 * chooseWashText(['en-GB']).words.language // => 'en'
 */
export function chooseWashText(languages: readonly string[]): WashText {
  const text = chooseText(languages);
  return { text, words: LANGUAGES.find(({ language }) => language === text.language) ?? washEn };
}
