import { clothEn } from './cloth-en.ts';
import { kitsEn } from './kits-en.ts';
import { chooseText, type Text } from './text.ts';

/** What tables of cloth say, in one language. */
export type ClothWords = typeof clothEn;

/** What the page about kits says, in one language; English sets what there is to say. */
export type KitsWords = typeof kitsEn;

/** The words that all pages share, those of tables of cloth, and those of kits. */
export interface KitsText {
  readonly text: Text;
  readonly cloth: ClothWords;
  readonly words: KitsWords;
}

const LANGUAGES: readonly (readonly [ClothWords, KitsWords])[] = [[clothEn, kitsEn]];

/**
 * The text about kits in the first language asked for that there is, else English.
 *
 * @param languages tags such as `de-AT`, best first.
 *
 * @example
 * chooseKitsText(['en-GB']).words.language // => 'en'
 */
export function chooseKitsText(languages: readonly string[]): KitsText {
  const text = chooseText(languages);
  const [cloth, words] = LANGUAGES.find(([{ language }]) => language === text.language) ?? [
    clothEn,
    kitsEn,
  ];
  return { text: { ...text, faults: { ...text.faults, ...words.faults } }, cloth, words };
}
